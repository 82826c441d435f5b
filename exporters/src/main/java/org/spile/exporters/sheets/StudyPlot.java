package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.layout.Figure;
import org.spile.geometry.kernel.measure.Written;

/**
 * A field of points: the first value to the right, the second up. Each point shows a sign for what came of it, the least
 * margin of what is demanded with every tolerance against it, and what its runs carry like. Signs differ in shape, so that
 * they hold in grey.
 *
 * @param study the study
 */
record StudyPlot(Study study) implements Figure {
    private static final double CAP_MM = Text.SMALL_MM;
    private static final double LINE_MM = CAP_MM * 1.7;
    private static final double LEFT_MM = 26;
    private static final double BELOW_MM = 14;
    private static final double LEGEND_MM = 14;
    private static final double ABOVE_MM = 8;
    private static final double LEAST_CELL_MM = 13;
    private static final double MOST_CELL_MM = 26;
    private static final double FRAME_MM = 1;

    @Override
    public double leastWideMm() {
        return LEFT_MM + columns().size() * LEAST_CELL_MM;
    }

    @Override
    public double highMm(double wideMm) {
        return ABOVE_MM + rows() * cellHighMm() + BELOW_MM + LEGEND_MM;
    }

    @Override
    public List<Mark> marks(Vector2D topLeft, double wideMm) {
        double cell = Math.min(MOST_CELL_MM, (wideMm - LEFT_MM) / columns().size());
        List<Mark> marks = new ArrayList<>();
        double left = topLeft.getX() + LEFT_MM;
        double top = topLeft.getY() - ABOVE_MM;
        double bottom = top - rows() * cellHighMm();
        Extent field = new Extent(left, bottom, left + columns().size() * cell, top);
        grid(marks, field, cell);
        axes(marks, field, cell);
        for (int i = 0; i < study.points().size(); i++) {
            int column = i / rows();
            int row = i % rows();
            double x = left + (column + 0.5) * cell;
            double y = bottom + (row + 0.5) * cellHighMm();
            point(marks, study.points().get(i), Vector2D.of(x, y), cell);
        }
        legend(marks, Vector2D.of(topLeft.getX(), bottom - BELOW_MM));
        return marks;
    }

    private List<Double> columns() {
        return study.variations().get(0).values();
    }

    private int rows() {
        return second().map(variation -> variation.values().size()).orElse(1);
    }

    private Optional<Variation> second() {
        return study.variations().stream().skip(1).findFirst();
    }

    /** How many runs are told of. */
    private int runs() {
        return study.points().stream()
                .mapToInt(point -> point.carried().size())
                .max()
                .orElse(0);
    }

    private double cellHighMm() {
        return 9 + LINE_MM * (1 + runs());
    }

    private void grid(List<Mark> marks, Extent field, double cell) {
        Pen pen = Layer.NOTES.pen();
        marks.add(Polyline.rectangle(pen.wide(Pen.WIDE_MM), field));
        for (int i = 1; i < columns().size(); i++) {
            double x = field.minX() + i * cell;
            marks.add(new Line(pen, Vector2D.of(x, field.minY()), Vector2D.of(x, field.maxY())));
        }
        for (int i = 1; i < rows(); i++) {
            double y = field.minY() + i * cellHighMm();
            marks.add(new Line(pen, Vector2D.of(field.minX(), y), Vector2D.of(field.maxX(), y)));
        }
    }

    private void axes(List<Mark> marks, Extent field, double cell) {
        Pen pen = Layer.NOTES.pen();
        for (int i = 0; i < columns().size(); i++) {
            marks.add(new Text(
                    pen,
                    Vector2D.of(field.minX() + (i + 0.5) * cell, field.minY() - 1.5),
                    Written.number(columns().get(i), 3),
                    CAP_MM,
                    0,
                    Anchor.TOP_CENTRE));
        }
        marks.add(new Text(
                pen.wide(0.35),
                Vector2D.of(field.minX(), field.minY() - 1.5 - LINE_MM - 0.8),
                "to the right: " + title(study.variations().get(0)),
                CAP_MM,
                0,
                Anchor.TOP_LEFT));
        second().ifPresent(variation -> {
            for (int i = 0; i < rows(); i++) {
                marks.add(new Text(
                        pen,
                        Vector2D.of(field.minX() - 1.5, field.minY() + (i + 0.5) * cellHighMm()),
                        Written.number(variation.values().get(i), 3),
                        CAP_MM,
                        0,
                        Anchor.MIDDLE_RIGHT));
            }
            marks.add(new Text(
                    pen.wide(0.35),
                    Vector2D.of(field.minX() - LEFT_MM, field.maxY() + 2),
                    "up: " + title(variation),
                    CAP_MM,
                    0,
                    Anchor.LEFT));
        });
    }

    private static String title(Variation variation) {
        return variation.says() + (variation.unit().isEmpty() ? "" : ", " + variation.unit());
    }

    private void point(List<Mark> marks, StudyPoint point, Vector2D middle, double cell) {
        double top = middle.getY() + cellHighMm() / 2;
        StudySign sign = point.trouble().isPresent() ? StudySign.NO_HOUSE : StudySign.of(point.verdict());
        marks.addAll(sign.at(Vector2D.of(middle.getX(), top - 4.6)));
        List<String> words = new ArrayList<>();
        words.add(margin(point));
        point.carried()
                .forEach(carried -> words.add(carried.roundMm()
                        .map(round -> "Ø " + Written.number(round.value(), 1))
                        .orElse("Ø ?")));
        double y = top - 8;
        for (String line : words) {
            if (!line.isEmpty()) {
                marks.add(
                        new Text(Layer.NOTES.pen(), Vector2D.of(middle.getX(), y), line, CAP_MM, 0, Anchor.TOP_CENTRE));
            }
            y -= LINE_MM;
        }
        if (point.front()) {
            marks.add(Polyline.rectangle(
                    Layer.NOTES.pen().wide(0.7),
                    Extent.ofSize(
                            middle.getX() - cell / 2 + FRAME_MM,
                            middle.getY() - cellHighMm() / 2 + FRAME_MM,
                            cell - 2 * FRAME_MM,
                            cellHighMm() - 2 * FRAME_MM)));
        }
    }

    /** The least margin with every tolerance against it, of what is demanded. */
    private static String margin(StudyPoint point) {
        return point.answers().stream()
                .filter(answer -> !answer.shown().weighed())
                .flatMap(answer -> answer.worst().stream())
                .map(Quantity::number)
                .min(Double::compare)
                .map(worst -> Written.number(worst, 1))
                .orElse("");
    }

    private void legend(List<Mark> marks, Vector2D topLeft) {
        double x = topLeft.getX() + 2.5;
        double y = topLeft.getY() - LEGEND_MM / 4;
        for (StudySign sign : StudySign.values()) {
            marks.addAll(sign.at(Vector2D.of(x, y)));
            Text words =
                    new Text(Layer.NOTES.pen(), Vector2D.of(x + 4, y), sign.words(), CAP_MM, 0, Anchor.MIDDLE_LEFT);
            marks.add(words);
            x += 4 + words.widthMm() + 6;
        }
        String numbers = "number: least margin at worst, mm" + (runs() == 0 ? "" : "; Ø: carries like a round, mm");
        marks.add(new Text(
                Layer.NOTES.pen(),
                Vector2D.of(topLeft.getX(), y - LEGEND_MM / 2),
                numbers,
                CAP_MM,
                0,
                Anchor.MIDDLE_LEFT));
    }
}
