package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Span;

/**
 * A dimension asked for; the layout finds its place.
 *
 * @param span what it measures
 * @param side the side of the view, or of the two points, where its line goes
 * @param close whether its line stays near the two points, even inside the view; else it joins the rows outside
 * @param wording what is written, with {@code <>} for the measured value
 * @param part path of the thing measured; empty if none
 */
public record Dimension(Span span, Side side, boolean close, String wording, String part) {
    /** Refuses wordings that hide the value. */
    public Dimension {
        if (!wording.contains(Dimensioned.VALUE)) {
            throw new IllegalArgumentException("dimension wording '" + wording + "' shows no measured value <>");
        }
    }

    /**
     * A level distance, its line above or below the view.
     *
     * @param from first point (model mm)
     * @param to second point (model mm)
     * @param side above or below
     */
    public static Dimension level(Vector2D from, Vector2D to, Side side) {
        if (!side.level()) {
            throw new IllegalArgumentException("a level dimension goes above or below, not " + side);
        }
        return new Dimension(new Span.Level(from, to, 0), side, false, Dimensioned.VALUE, "");
    }

    /**
     * An upright distance, its line left or right of the view.
     *
     * @param from first point (model mm)
     * @param to second point (model mm)
     * @param side left or right
     */
    public static Dimension upright(Vector2D from, Vector2D to, Side side) {
        if (side.level()) {
            throw new IllegalArgumentException("an upright dimension goes left or right, not " + side);
        }
        return new Dimension(new Span.Level(from, to, 90), side, false, Dimensioned.VALUE, "");
    }

    /**
     * The straight distance between two points, its line beside them.
     *
     * @param from first point (model mm)
     * @param to second point (model mm)
     * @param side towards which of the two sides the line moves
     */
    public static Dimension straight(Vector2D from, Vector2D to, Side side) {
        return new Dimension(new Span.Straight(from, to), side, true, Dimensioned.VALUE, "");
    }

    /**
     * Distances one after the other; only where adding up tolerances does no harm.
     *
     * @param points at least two, in order along the side
     * @param side which side of the view
     */
    public static List<Dimension> chain(List<Vector2D> points, Side side) {
        var chain = new ArrayList<Dimension>();
        for (var i = 1; i < points.size(); i++) {
            chain.add(along(points.get(i - 1), points.get(i), side));
        }
        return chain;
    }

    /**
     * Distances all from one datum, one row each.
     *
     * @param datum where measuring starts (model mm)
     * @param points what is measured to (model mm)
     * @param side which side of the view
     */
    public static List<Dimension> parallel(Vector2D datum, List<Vector2D> points, Side side) {
        return points.stream().map(point -> along(datum, point, side)).toList();
    }

    private static Dimension along(Vector2D from, Vector2D to, Side side) {
        return side.level() ? level(from, to, side) : upright(from, to, side);
    }

    /** The same, its line near the two points. */
    public Dimension near() {
        return new Dimension(span, side, true, wording, part);
    }

    /**
     * The same with another wording.
     *
     * @param words with {@code <>} for the measured value, such as {@code (<>)}
     */
    public Dimension worded(String words) {
        return new Dimension(span, side, close, words, part);
    }

    /**
     * The same with a tolerance behind the value.
     *
     * @param text such as {@code ±3}
     */
    public Dimension tolerated(String text) {
        return worded(Dimensioned.VALUE + " " + text);
    }

    /** The same for a thing. */
    public Dimension of(String path) {
        return new Dimension(span, side, close, wording, path);
    }
}
