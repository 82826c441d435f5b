package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Circle;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Span;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;

/**
 * Finds a place for running dimensions: one line, a circle at its datum, an arrow and a value at each extension line
 * (ISO 129-1). Values that would touch are moved apart and their extension lines bent after them.
 *
 * <pre>
 *      |   |  |         |        extension lines
 *      o--&gt;+-&gt;+--------&gt;+        line
 *      |   /  \         |        bent where values are moved apart
 *      0  80  110      400       values, read along the extension lines
 * </pre>
 */
final class RunningLayout {
    private static final double DATUM_RADIUS_MM = 1.5;
    private static final double BEND_FROM_MM = 1.5;
    private static final double BEND_TO_MM = 4;
    private static final double TEXT_FROM_MM = 4.6;
    private static final double TEXT_PITCH_MM = 4.8;
    private static final double DOT_MM = 0.6;

    private final RunningDimension asked;
    private final Ground ground;
    private final Extent outline;
    private final double unit;
    private final Pen pen;
    private final List<Stop> stops = new ArrayList<>();

    /** A point measured to: where it lies along, where its value stands, and what it measures; null at the datum. */
    private record Stop(Vector2D point, double along, double valueAlong, boolean datum, Span span) {}

    RunningLayout(RunningDimension asked, Ground ground, Extent outline, double unit) {
        this.asked = asked;
        this.ground = ground;
        this.outline = outline;
        this.unit = unit;
        this.pen = Layer.DIMENSIONS.pen().of(asked.part());
        var along = frame().along();
        var points = Stream.concat(
                        Stream.of(asked.datum()),
                        asked.features().stream()
                                .filter(feature -> Math.abs(along.dot(feature.subtract(asked.datum()))) > 1e-6))
                .sorted(Comparator.comparingDouble(along::dot))
                .toList();
        var values = Spread.apart(points.stream().map(along::dot).toList(), TEXT_PITCH_MM * unit);
        for (var i = 0; i < points.size(); i++) {
            var point = points.get(i);
            stops.add(new Stop(point, along.dot(point), values.get(i), point.equals(asked.datum()), span(point)));
        }
    }

    private Span.Running span(Vector2D point) {
        return new Span.Running(asked.datum(), point, asked.side().level());
    }

    private DimensionFrame frame() {
        return DimensionFrame.of(span(asked.datum()), asked.side(), false, outline);
    }

    /** The marks in the first row that is free. */
    List<Mark> place() {
        var frame = frame();
        for (var k = 0; ; k++) {
            var row = frame.base() + (DimensionLayout.FIRST_ROW_MM + k * DimensionLayout.ROW_MM) * unit;
            if (fits(frame, row)) {
                return draw(frame, row);
            }
        }
    }

    private boolean fits(DimensionFrame frame, double row) {
        var line = line(frame, row);
        var clear = ground.clear(Ground.Kind.TEXT, line, unit)
                && ground.clear(Ground.Kind.TEXT, datumBox(frame, row), 0.5 * unit)
                && ground.clear(Ground.Kind.ARROW, datumBox(frame, row), 0.3 * unit)
                && ground.clear(Ground.Kind.BODY, line, unit)
                && ground.clear(Ground.Kind.THREAD, line, -0.05 * unit);
        for (var stop : stops) {
            var box = value(frame, row, stop).patch(unit);
            var bend = bend(frame, row, stop);
            clear = clear
                    && ground.clear(Ground.Kind.TEXT, bend, 0.5 * unit)
                    && ground.clear(Ground.Kind.ARROW, bend, 0.3 * unit)
                    && ground.clear(Ground.Kind.TEXT, box, 0.7 * unit)
                    && ground.clear(Ground.Kind.ARROW, box, 0.5 * unit)
                    && ground.clear(Ground.Kind.HEAVY, box, 0.8 * unit)
                    && ground.clear(Ground.Kind.NARROW, box, 0.3 * unit)
                    && ground.clear(Ground.Kind.BODY, box, 0.3 * unit)
                    && ground.clear(Ground.Kind.THREAD, box, 0.5 * unit);
        }
        return clear;
    }

    /** Round the datum's circle. */
    private Patch datumBox(DimensionFrame frame, double row) {
        var middle = frame.at(frame.along().dot(asked.datum()), row);
        var radius = DATUM_RADIUS_MM * unit;
        return new Patch(new Extent(
                        middle.getX() - radius, middle.getY() - radius, middle.getX() + radius, middle.getY() + radius)
                .corners());
    }

    /** Where an extension line leaves the dimension line for its value. */
    private Patch bend(DimensionFrame frame, double row, Stop stop) {
        return Patch.of(
                frame.at(stop.along(), row + BEND_FROM_MM * unit),
                frame.at(stop.valueAlong(), row + BEND_TO_MM * unit));
    }

    private Patch line(DimensionFrame frame, double row) {
        return Patch.of(
                frame.at(stops.get(0).along(), row),
                frame.at(stops.get(stops.size() - 1).along(), row));
    }

    private Text value(DimensionFrame frame, double row, Stop stop) {
        // Read from the bottom or the right: along the extension line, whichever way that is.
        var upright = asked.side().level();
        var outIsReading = frame.out().getX() + frame.out().getY() > 0;
        var at = frame.at(stop.valueAlong(), row + TEXT_FROM_MM * unit);
        var says = Dimensioned.says(Dimensioned.VALUE, stop.span().measuredMm());
        return new Text(
                pen.wide(0.35),
                at,
                says,
                Text.USUAL_MM,
                upright ? 90 : 0,
                outIsReading ? Anchor.MIDDLE_LEFT : Anchor.MIDDLE_RIGHT);
    }

    private List<Mark> draw(DimensionFrame frame, double row) {
        var marks = new ArrayList<Mark>();
        marks.add(new Circle(pen, frame.at(frame.along().dot(asked.datum()), row), DATUM_RADIUS_MM * unit));
        marks.add(new Line(
                pen,
                line(frame, row).corners().get(0),
                line(frame, row).corners().get(1)));
        ground.add(Ground.Kind.THREAD, line(frame, row));
        for (var i = 0; i < stops.size(); i++) {
            var stop = stops.get(i);
            var strokes = new ArrayList<Stroke>(extension(frame, row, stop));
            if (!stop.datum()) {
                strokes.add(head(frame, row, i));
            }
            var value = value(frame, row, stop);
            strokes.add(value);
            ground.add(Ground.Kind.TEXT, value.patch(unit));
            if (stop.datum()) {
                marks.addAll(strokes);
            } else {
                marks.add(new Dimensioned(
                        pen,
                        stop.span(),
                        frame.at(stop.valueAlong(), row + BEND_TO_MM * unit),
                        value.patch(unit).middle(),
                        Dimensioned.VALUE,
                        strokes));
            }
        }
        return marks;
    }

    private List<Line> extension(DimensionFrame frame, double row, Stop stop) {
        var start = frame.out().dot(stop.point()) + DimensionTry.GAP_MM * unit;
        var bend = row + BEND_FROM_MM * unit;
        var lines = new ArrayList<Line>();
        if (bend > start) {
            lines.addAll(
                    Threads.broken(pen, frame.at(stop.along(), start), frame.at(stop.along(), bend), ground, unit));
        }
        var ends = bend(frame, row, stop).corners();
        lines.add(new Line(pen, ends.get(0), ends.get(1)));
        lines.forEach(line -> ground.add(Ground.Kind.THREAD, Patch.of(line.from(), line.to())));
        return lines;
    }

    /** An arrow away from the datum; a dot where the next stop inwards leaves no room for one. */
    private Stroke head(DimensionFrame frame, double row, int i) {
        var stop = stops.get(i);
        var beyond = stop.along() > frame.along().dot(asked.datum());
        var inner = stops.get(beyond ? i - 1 : i + 1);
        var room = Math.abs(stop.along() - inner.along());
        var tip = frame.at(stop.along(), row);
        var least = (DimensionTry.ARROW_MM + (inner.datum() ? DATUM_RADIUS_MM : 0.5)) * unit;
        if (room < least) {
            var dot = DOT_MM * unit;
            return new Fill(
                    pen,
                    List.of(
                            tip.add(Vector2D.of(dot, 0)),
                            tip.add(Vector2D.of(0, dot)),
                            tip.add(Vector2D.of(-dot, 0)),
                            tip.add(Vector2D.of(0, -dot))));
        }
        var arrow = Fill.arrow(pen, tip, frame.along().multiply(beyond ? 1 : -1), DimensionTry.ARROW_MM * unit);
        ground.add(Ground.Kind.ARROW, new Patch(arrow.corners()));
        return arrow;
    }
}
