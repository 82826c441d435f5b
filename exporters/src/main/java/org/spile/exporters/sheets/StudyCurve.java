package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.whole.ShownAnswer;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.layout.Figure;
import org.spile.geometry.kernel.measure.Written;

/**
 * A number of each point over one swept value: full line and dashed line, from least to greatest.
 *
 * @param variation the value, to the right
 * @param title what goes up, in words with its unit
 * @param full the full line's number of each point, where it has one
 * @param dashed the dashed line's
 */
record StudyCurve(Variation variation, String title, List<Optional<Double>> full, List<Optional<Double>> dashed)
        implements Figure {
    private static final double CAP_MM = Text.SMALL_MM;
    private static final double LEFT_MM = 26;
    private static final double ABOVE_MM = 8;
    private static final double HIGH_MM = 60;
    private static final double BELOW_MM = 7;
    private static final double INSET_MM = 4;
    private static final double LEAST_MM = 120;
    private static final double LABEL_MM = 14;

    StudyCurve {
        full = List.copyOf(full);
        dashed = List.copyOf(dashed);
    }

    /** The least margin of what is demanded: at worst full, as drawn dashed; nothing if there is none. */
    static Optional<StudyCurve> margins(Variation variation, List<StudyPoint> points) {
        var curve = new StudyCurve(
                variation,
                "least margin, mm: at worst (full), as drawn (dashed)",
                points.stream().map(point -> least(point, ShownAnswer::worst)).toList(),
                points.stream().map(point -> least(point, ShownAnswer::margin)).toList());
        return curve.known().isEmpty() ? Optional.empty() : Optional.of(curve);
    }

    /** What a run carries like; nothing if that is known nowhere. */
    static Optional<StudyCurve> round(Variation variation, List<StudyPoint> points, String run) {
        var curve = new StudyCurve(
                variation,
                run + " carries like a round of so many mm",
                points.stream().map(point -> roundMm(point, run)).toList(),
                points.stream().map(point -> Optional.<Double>empty()).toList());
        return curve.known().isEmpty() ? Optional.empty() : Optional.of(curve);
    }

    private static Optional<Double> roundMm(StudyPoint point, String run) {
        return point.carried().stream()
                .filter(carried -> carried.run().equals(run))
                .flatMap(carried -> carried.roundMm().stream())
                .map(round -> round.value())
                .findFirst();
    }

    private static Optional<Double> least(StudyPoint point, Function<ShownAnswer, Optional<Quantity>> margin) {
        return point.answers().stream()
                .filter(answer -> !answer.shown().weighed())
                .flatMap(answer -> margin.apply(answer).stream())
                .map(Quantity::number)
                .min(Double::compare);
    }

    private List<Double> known() {
        List<Double> known = new ArrayList<>();
        full.forEach(number -> number.ifPresent(known::add));
        dashed.forEach(number -> number.ifPresent(known::add));
        return known;
    }

    @Override
    public double leastWideMm() {
        return LEAST_MM;
    }

    @Override
    public double highMm(double wideMm) {
        return ABOVE_MM + HIGH_MM + BELOW_MM;
    }

    @Override
    public List<Mark> marks(Vector2D topLeft, double wideMm) {
        List<Mark> marks = new ArrayList<>();
        double top = topLeft.getY() - ABOVE_MM;
        Extent field = new Extent(topLeft.getX() + LEFT_MM, top - HIGH_MM, topLeft.getX() + wideMm, top);
        Pen pen = Layer.NOTES.pen();
        marks.add(Polyline.rectangle(pen.wide(Pen.WIDE_MM), field));
        marks.add(
                new Text(pen.wide(0.35), Vector2D.of(topLeft.getX(), field.maxY() + 2), title, CAP_MM, 0, Anchor.LEFT));
        Span up = Span.of(known(), field.minY() + INSET_MM, field.maxY() - INSET_MM);
        Span right = Span.of(variation.values(), field.minX() + INSET_MM, field.maxX() - INSET_MM);
        for (double level : up.ticks()) {
            double y = up.at(level);
            marks.add(new Line(
                    level == 0 ? pen.wide(Pen.WIDE_MM) : pen,
                    Vector2D.of(field.minX(), y),
                    Vector2D.of(field.maxX(), y)));
            marks.add(number(level, Vector2D.of(field.minX() - 1.5, y), Anchor.MIDDLE_RIGHT));
        }
        double labelled = Double.NEGATIVE_INFINITY;
        for (double value : variation.values()) {
            double x = right.at(value);
            if (x - labelled >= LABEL_MM) {
                marks.add(number(value, Vector2D.of(x, field.minY() - 1.5), Anchor.TOP_CENTRE));
                marks.add(new Line(pen, Vector2D.of(x, field.minY()), Vector2D.of(x, field.minY() + 1.5)));
                labelled = x;
            }
        }
        marks.addAll(line(pen.wide(0.7), full, right, up));
        marks.addAll(line(pen.wide(0.35).as(LineType.DASHED), dashed, right, up));
        return marks;
    }

    private static Text number(double number, Vector2D at, Anchor anchor) {
        return new Text(Layer.NOTES.pen(), at, Written.number(number, 3), CAP_MM, 0, anchor);
    }

    /** The line through neighbouring points; where a point has no number it is broken. */
    private List<Mark> line(Pen pen, List<Optional<Double>> numbers, Span right, Span up) {
        List<Mark> marks = new ArrayList<>();
        List<Vector2D> run = new ArrayList<>();
        for (int i = 0; i <= numbers.size(); i++) {
            Optional<Double> number = i < numbers.size() ? numbers.get(i) : Optional.empty();
            if (number.isPresent()) {
                run.add(Vector2D.of(right.at(variation.values().get(i)), up.at(number.get())));
            } else {
                if (run.size() > 1) {
                    marks.add(Polyline.path(pen, run));
                }
                run = new ArrayList<>();
            }
        }
        return marks;
    }

    /**
     * From numbers to paper.
     *
     * @param least and most numbers
     * @param from and to where they lie (paper mm)
     */
    private record Span(double least, double most, double from, double to) {
        private static final int TICKS = 6;

        static Span of(List<Double> numbers, double from, double to) {
            double least = numbers.stream().min(Double::compare).orElseThrow();
            double most = numbers.stream().max(Double::compare).orElseThrow();
            double room = most - least < 1e-9 ? 1 : 0;
            return new Span(least - room, most + room, from, to);
        }

        double at(double number) {
            return from + (number - least) / (most - least) * (to - from);
        }

        /** Round numbers between its ends: 1, 2 or 5 times a power of ten apart, some six of them. */
        List<Double> ticks() {
            double step = Math.pow(10, Math.floor(Math.log10((most - least) / TICKS)));
            while ((most - least) / step > TICKS) {
                step *= (most - least) / (2 * step) <= TICKS ? 2 : (most - least) / (5 * step) <= TICKS ? 5 : 10;
            }
            List<Double> ticks = new ArrayList<>();
            for (double i = Math.ceil(least / step - 1e-9); i * step <= most + 1e-9 * step; i++) {
                ticks.add(i * step + 0.0);
            }
            return ticks;
        }
    }
}
