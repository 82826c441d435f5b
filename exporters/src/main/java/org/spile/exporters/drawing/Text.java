package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One line of lettering.
 *
 * @param pen how and whose
 * @param at where its anchor stands (mm)
 * @param says the words; control characters and broken surrogates are taken out
 * @param capMm height of its capitals on paper (mm), one of ISO 3098's heights for ordinary use
 * @param angleDeg reading direction, degrees from the x axis
 * @param anchor which point of the text stands at the place
 */
public record Text(Pen pen, Vector2D at, String says, double capMm, double angleDeg, Anchor anchor) implements Stroke {
    /** Height of dimension values, names and notes (mm, ISO 3098). */
    public static final double USUAL_MM = 3.5;
    /** Least height on A4 and A3 (mm, ISO 3098). */
    public static final double SMALL_MM = 2.5;
    /** Height of view titles and section letters (mm, ISO 3098). */
    public static final double TITLE_MM = 5;
    /** Height of the drawing's title and number (mm, ISO 3098). */
    public static final double LARGE_MM = 7;

    /** Cleans the words and refuses heights that are none. */
    public Text {
        Places.check(at);
        says = Lettering.printable(says);
        Places.checkLength(capMm, "text height");
        if (!Double.isFinite(angleDeg)) {
            throw new IllegalArgumentException("text angle " + angleDeg + " is not a number");
        }
    }

    /** A level text of the usual height that starts at a place. */
    public static Text of(Pen pen, Vector2D at, String says) {
        return new Text(pen, at, says, USUAL_MM, 0, Anchor.LEFT);
    }

    /** The same text at another height (mm). */
    public Text high(double mm) {
        return new Text(pen, at, says, mm, angleDeg, anchor);
    }

    /** The same text with another anchor. */
    public Text anchored(Anchor other) {
        return new Text(pen, at, says, capMm, angleDeg, other);
    }

    /** Width on paper (mm), by the shipped font's metrics. */
    public double widthMm() {
        return Lettering.shipped().widthMm(says, capMm);
    }

    /**
     * The patch of drawing that the ink may touch.
     *
     * @param unitsPerMm drawing units for one millimetre on paper: 1 on a sheet, N in a view at 1:N
     */
    public Patch patch(double unitsPerMm) {
        var wide = widthMm() * unitsPerMm;
        var cap = capMm * unitsPerMm;
        var along = Vector2D.of(StrictMath.cos(Math.toRadians(angleDeg)), StrictMath.sin(Math.toRadians(angleDeg)));
        var up = Vector2D.of(-along.getY(), along.getX());
        var base = at.subtract(along.multiply(anchor.across() * wide)).subtract(up.multiply(anchor.up() * cap));
        var low = base.subtract(up.multiply(Lettering.below(says) * cap));
        var high = base.add(up.multiply(Lettering.above(says) * cap));
        var end = along.multiply(wide);
        return Patch.of(low, low.add(end), high.add(end), high);
    }

    /** The start of the baseline, where formats without anchors begin to write. */
    public Vector2D baseline(double unitsPerMm) {
        var along = Vector2D.of(StrictMath.cos(Math.toRadians(angleDeg)), StrictMath.sin(Math.toRadians(angleDeg)));
        var up = Vector2D.of(-along.getY(), along.getX());
        return at.subtract(up.multiply(anchor.up() * capMm * unitsPerMm));
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        return new Text(pen.of(part), Places.put(at, turnDeg, shift), says, capMm, angleDeg + turnDeg, anchor);
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return List.of(patch(unitsPerMm));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.text(this);
    }
}
