package org.spile.exporters.drawing.layout;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;

/**
 * Where another view is cut: its two ends, wide and then long-dashed dotted, arrows in the direction of looking, the
 * letter at each end (ISO 128-3).
 *
 * @param letter of the section
 * @param from one end (model mm)
 * @param to the other end (model mm)
 * @param looks a direction in which the section is looked at; the arrows stand across the line on that side
 */
record CuttingPlane(String letter, Vector2D from, Vector2D to, Side looks) {
    private static final double WIDE_END_MM = 6;
    /** How much of the narrow line is drawn behind each wide end; in between it would only cross the picture. */
    private static final double RUN_MM = 3;

    /** So that the ends lie outside what is drawn, where no names stand. */
    private static final double BEYOND_MM = WIDE_END_MM + RUN_MM;

    private static final double ARROW_MM = 4;
    private static final double SHAFT_MM = 8;
    /** From one plane's arrow to that of the next, which stands behind it: past its letter. */
    private static final double STEP_MM = 9.5;

    CuttingPlane {
        if (from.distance(to) < 1e-6) {
            throw new IllegalArgumentException("cutting plane " + letter + " has no length");
        }
    }

    /** How far it stands towards what it looks at (model mm). */
    double forwardMm() {
        return from.dot(looks.outward());
    }

    /**
     * What is drawn of it.
     *
     * @param unit how much of the model a millimetre of paper shows
     * @param step how many planes stand between it and the view
     */
    List<Stroke> strokes(double unit, int step) {
        var along = to.subtract(from).normalize();
        var across = Vector2D.of(-along.getY(), along.getX());
        var looking = across.dot(looks.outward()) >= 0 ? across : across.negate();
        var beyond = (BEYOND_MM + step * STEP_MM) * unit;
        var start = from.subtract(along.multiply(beyond));
        var end = to.add(along.multiply(beyond));
        var narrow = Layer.CUTTING_PLANES.pen();
        var wide = narrow.wide(Pen.WIDE_MM).as(LineType.CONTINUOUS);
        var stub = along.multiply(WIDE_END_MM * unit);
        var left = start.distance(end) - 2 * WIDE_END_MM * unit;
        var run = along.multiply(Math.min(RUN_MM * unit, left / 2));
        return List.of(
                new Line(narrow, start.add(stub), start.add(stub).add(run)),
                new Line(narrow, end.subtract(stub).subtract(run), end.subtract(stub)),
                new Line(wide, start, start.add(stub)),
                new Line(wide, end.subtract(stub), end),
                shaft(start, looking, unit),
                shaft(end, looking, unit),
                Fill.arrow(wide, start.add(looking.multiply(SHAFT_MM * unit)), looking, ARROW_MM * unit),
                Fill.arrow(wide, end.add(looking.multiply(SHAFT_MM * unit)), looking, ARROW_MM * unit),
                letter(start, along.negate(), looking, unit),
                letter(end, along, looking, unit));
    }

    private static Line shaft(Vector2D from, Vector2D looking, double unit) {
        var pen = Layer.CUTTING_PLANES.pen().as(LineType.CONTINUOUS);
        return new Line(pen, from, from.add(looking.multiply((SHAFT_MM - ARROW_MM) * unit)));
    }

    private Text letter(Vector2D end, Vector2D outwards, Vector2D looking, double unit) {
        var at = end.add(outwards.multiply(4.5 * unit)).add(looking.multiply(SHAFT_MM / 2 * unit));
        return new Text(Layer.CUTTING_PLANES.pen().wide(0.5), at, letter, Text.TITLE_MM, 0, Anchor.MIDDLE);
    }
}
