package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;

/**
 * One way to draw a dimension: which row, where along it the value stands, arrows inside or outside.
 *
 * <pre>
 *      low             high
 *       |&lt;----- 708 ----&gt;|          arrows inside, value above the line
 *       |                |
 *
 *    --&gt;| |&lt;-- 12                   arrows outside, value on the line drawn on
 * </pre>
 *
 * <p>Sizes on paper follow ISO 129-1 at narrow lines of 0.25: gap and overshoot 2 (8 widths), arrows of 3, value 1 above
 * the line.
 */
final class DimensionTry {
    static final double ARROW_MM = 3;
    static final double GAP_MM = 2;
    static final double OVERSHOOT_MM = 2;
    private static final double ABOVE_LINE_MM = 1;
    /** Brackets and commas hang below the baseline; they keep off the arrows too, which are 0.8 high. */
    private static final double HANGING_ABOVE_LINE_MM = 1;

    private static final double TAIL_MM = 6;
    private static final double TEXT_APART_MM = 0.7;

    /** How strictly a try keeps off what is there. */
    enum Care {
        /** Crosses nothing. */
        CROSSES_NOTHING,
        /** Extension lines may cross dimension lines and the drawing. */
        CROSSES_LINES,
        /** Extension lines may also be interrupted at texts. */
        BROKEN_AT_TEXTS
    }

    private final Dimension dimension;
    private final DimensionFrame frame;
    private final double unit;
    private final double row;
    private final boolean arrowsInside;
    private final double textAlong;
    private final double lineFrom;
    private final double lineTo;
    private final double rise;
    private final Text text;
    private final Pen pen;

    /**
     * One way to draw it.
     *
     * @param dimension what was asked
     * @param frame its directions
     * @param unit drawing units for one millimetre on paper
     * @param row where the line lies, outwards
     * @param place where the value stands along the line
     */
    DimensionTry(Dimension dimension, DimensionFrame frame, double unit, double row, Place place) {
        this.dimension = dimension;
        this.frame = frame;
        this.unit = unit;
        this.row = row;
        this.pen = Layer.DIMENSIONS.pen().of(dimension.part());
        this.arrowsInside = frame.length() >= 3 * ARROW_MM * unit;
        this.textAlong = place.middle();
        var tail = arrowsInside ? 0 : TAIL_MM * unit;
        this.lineFrom = Math.min(frame.low() - tail, place.lineFrom());
        this.lineTo = Math.max(frame.high() + tail, place.lineTo());
        var says = Dimensioned.says(dimension.wording(), dimension.span().measuredMm());
        var hanging = Lettering.hangingMm(says, Text.USUAL_MM);
        this.rise = Math.max(ABOVE_LINE_MM, HANGING_ABOVE_LINE_MM + hanging);
        var base = frame.at(textAlong, row).add(frame.up().multiply(rise * unit));
        this.text = new Text(pen.wide(0.35), base, says, Text.USUAL_MM, frame.angleDeg(), Anchor.CENTRE);
    }

    /**
     * Where a value stands along its line.
     *
     * @param middle the text's middle
     * @param lineFrom how far the line must be drawn on, downwards
     * @param lineTo how far the line must be drawn on, upwards
     */
    record Place(double middle, double lineFrom, double lineTo) {}

    /** All places for a value along its line, the best first. */
    static List<Place> places(DimensionFrame frame, double textWide, double unit) {
        var places = new ArrayList<Place>();
        var middle = (frame.low() + frame.high()) / 2;
        var free = (frame.length() - textWide) / 2 - 0.5 * unit;
        if (free >= 0) {
            for (var share : new double[] {0, 0.35, -0.35, 0.7, -0.7, 1, -1}) {
                places.add(new Place(middle + share * free, middle, middle));
            }
        }
        var inside = frame.length() >= 3 * ARROW_MM * unit;
        var start = (inside ? 1 : ARROW_MM + 0.8) * unit;
        var end = start + textWide;
        places.add(new Place(frame.high() + (start + end) / 2, middle, frame.high() + end));
        places.add(new Place(frame.low() - (start + end) / 2, frame.low() - end, middle));
        return places;
    }

    /** Whether it keeps off everything on the ground, as strictly as asked. */
    boolean fits(Ground ground, Care care) {
        var box = text.patch(unit);
        if (!ground.clear(Ground.Kind.TEXT, box, TEXT_APART_MM * unit)
                || !ground.clear(Ground.Kind.ARROW, box, 0.5 * unit)
                || !ground.clear(Ground.Kind.HEAVY, box, 0.8 * unit)
                || !ground.clear(Ground.Kind.NARROW, box, 0.3 * unit)
                || !ground.clear(Ground.Kind.THREAD, box, 0.5 * unit)
                || !ground.clear(Ground.Kind.BODY, body(), -0.1 * unit)) {
            return false;
        }
        var line = line();
        if (!ground.clear(Ground.Kind.TEXT, line, 0.4 * unit) || !arrowsFit(ground)) {
            return false;
        }
        if (care == Care.CROSSES_NOTHING
                && (!ground.clear(Ground.Kind.HEAVY, line, 0.7 * unit)
                        || !ground.clear(Ground.Kind.THREAD, shortened(line), 0))) {
            return false;
        }
        return extensionsFit(ground, care);
    }

    private boolean arrowsFit(Ground ground) {
        for (var arrow : arrows()) {
            var patch = new Patch(arrow.corners());
            if (!ground.clear(Ground.Kind.TEXT, patch, 0.4 * unit)
                    || !ground.clear(Ground.Kind.ARROW, patch, -0.05 * unit)) {
                return false;
            }
        }
        return true;
    }

    private boolean extensionsFit(Ground ground, Care care) {
        if (care == Care.BROKEN_AT_TEXTS) {
            return true;
        }
        for (var extension : extensions()) {
            if (!ground.clear(Ground.Kind.TEXT, extension, 0.5 * unit)
                    || !ground.clear(Ground.Kind.ARROW, extension, -0.05 * unit)
                    || (care == Care.CROSSES_NOTHING && !ground.clear(Ground.Kind.BODY, extension, -0.15 * unit))) {
                return false;
            }
        }
        return true;
    }

    /** The dimension as drawn; its parts are now on the ground too. */
    Dimensioned onto(Ground ground) {
        var strokes = new ArrayList<Stroke>();
        for (var extension : extensions()) {
            var ends = extension.corners();
            var pieces = Threads.broken(pen, ends.get(0), ends.get(1), ground, unit);
            strokes.addAll(pieces);
            pieces.forEach(piece -> ground.add(Ground.Kind.THREAD, Patch.of(piece.from(), piece.to())));
        }
        var line = line();
        strokes.add(new Line(pen, line.corners().get(0), line.corners().get(1)));
        var arrows = arrows();
        strokes.addAll(arrows);
        strokes.add(text);
        ground.add(Ground.Kind.THREAD, line);
        arrows.forEach(arrow -> ground.add(Ground.Kind.ARROW, new Patch(arrow.corners())));
        ground.add(Ground.Kind.TEXT, text.patch(unit));
        ground.add(Ground.Kind.BODY, body());
        var textMiddle = text.at().add(frame.up().multiply(Text.USUAL_MM / 2 * unit));
        var to = along(dimension.span().to()) == frame.high() ? frame.high() : frame.low();
        return new Dimensioned(pen, dimension.span(), frame.at(to, row), textMiddle, dimension.wording(), strokes);
    }

    private double along(Vector2D point) {
        return frame.along().dot(point);
    }

    private Patch line() {
        return Patch.of(frame.at(lineFrom, row), frame.at(lineTo, row));
    }

    /** The line without its ends, where it meets extension lines of its neighbours in a chain. */
    private Patch shortened(Patch line) {
        var from = line.corners().get(0);
        var to = line.corners().get(1);
        var cut = Math.min(0.4, 0.3 * unit / Math.max(from.distance(to), 1e-9));
        return Patch.of(from.lerp(to, cut), to.lerp(from, cut));
    }

    private List<Fill> arrows() {
        var inwards = arrowsInside ? -1 : 1;
        return List.of(
                Fill.arrow(pen, frame.at(frame.low(), row), frame.along().multiply(inwards), ARROW_MM * unit),
                Fill.arrow(pen, frame.at(frame.high(), row), frame.along().multiply(-inwards), ARROW_MM * unit));
    }

    private List<Patch> extensions() {
        var extensions = new ArrayList<Patch>();
        for (var point : List.of(frame.lowPoint(), frame.highPoint())) {
            var start = frame.out().dot(point) + GAP_MM * unit;
            var end = row + OVERSHOOT_MM * unit;
            if (end > start) {
                extensions.add(Patch.of(frame.at(along(point), start), frame.at(along(point), end)));
            }
        }
        return extensions;
    }

    /** The line with arrows and value as one block that no other dimension's block may enter. */
    private Patch body() {
        var rises = frame.up().multiply((rise + Text.USUAL_MM + 0.3) * unit);
        var sinks = frame.up().multiply(-0.9 * unit);
        var from = frame.at(lineFrom, row);
        var to = frame.at(lineTo, row);
        return Patch.of(from.add(sinks), to.add(sinks), to.add(rises), from.add(rises));
    }
}
