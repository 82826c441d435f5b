package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.FittedText;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Text;

/**
 * A ruled table; words break into as many lines as they need, and an empty cell is room to write.
 *
 * @param columns at least one
 * @param rows from the top
 * @param leastRowMm least height of a row (mm): 8 is room for handwriting
 */
public record Table(List<Column> columns, List<Row> rows, double leastRowMm) implements Figure {
    private static final double CAP_MM = Text.SMALL_MM;
    private static final double LINE_MM = CAP_MM * 1.55;
    private static final double PAD_MM = 1.2;
    private static final double LEAST_MM = 150;

    /** Copies the lists. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.cells().size() != columns.size() && row.cells().size() != 1) {
                throw new IllegalArgumentException("a row has one cell, or " + columns.size() + ": " + row.cells());
            }
        }
    }

    /**
     * A column.
     *
     * @param heading over it
     * @param share of the width, against the others'
     */
    public record Column(String heading, double share) {}

    /**
     * A row: a cell for each column, or one cell that goes right across, as a heading of what follows. Each cell is a list of
     * paragraphs.
     *
     * @param cells from the left
     */
    public record Row(List<List<String>> cells) {
        /** Copies the lists. */
        public Row {
            cells = cells.stream().map(List::copyOf).toList();
        }

        /** A row that goes right across. */
        public static Row heading(String words) {
            return new Row(List.of(List.of(words)));
        }
    }

    @Override
    public double leastWideMm() {
        return LEAST_MM;
    }

    @Override
    public double highMm(double wideMm) {
        double high = headHighMm(wideMm);
        for (Row row : rows) {
            high += highMm(row, wideMm);
        }
        return high;
    }

    @Override
    public List<Mark> marks(Vector2D topLeft, double wideMm) {
        List<Mark> marks = new ArrayList<>();
        Pen narrow = Layer.NOTES.pen();
        double y = topLeft.getY();
        double headHigh = headHighMm(wideMm);
        List<Double> edges = edges(topLeft.getX(), wideMm);
        for (int i = 0; i < columns.size(); i++) {
            words(
                    marks,
                    narrow.wide(0.35),
                    List.of(columns.get(i).heading()),
                    edges.get(i),
                    edges.get(i + 1),
                    y,
                    headHigh);
        }
        y -= headHigh;
        double bodyTop = y;
        marks.add(line(narrow.wide(Pen.WIDE_MM), topLeft.getX(), y, topLeft.getX() + wideMm, y));
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double high = highMm(row, wideMm);
            boolean across = row.cells().size() == 1;
            for (int j = 0; j < row.cells().size(); j++) {
                double right = across ? topLeft.getX() + wideMm : edges.get(j + 1);
                words(marks, across ? narrow.wide(0.35) : narrow, row.cells().get(j), edges.get(j), right, y, high);
            }
            if (!across) {
                for (double edge : edges.subList(1, columns.size())) {
                    marks.add(line(narrow, edge, y, edge, y - high));
                }
            }
            y -= high;
            if (i + 1 < rows.size()) {
                marks.add(line(narrow, topLeft.getX(), y, topLeft.getX() + wideMm, y));
            }
        }
        for (double edge : edges.subList(1, columns.size())) {
            marks.add(line(narrow, edge, topLeft.getY(), edge, bodyTop));
        }
        marks.add(Polyline.rectangle(
                narrow.wide(Pen.WIDE_MM), new Extent(topLeft.getX(), y, topLeft.getX() + wideMm, topLeft.getY())));
        return marks;
    }

    private static Line line(Pen pen, double fromX, double fromY, double toX, double toY) {
        return new Line(pen, Vector2D.of(fromX, fromY), Vector2D.of(toX, toY));
    }

    private List<Double> edges(double left, double wideMm) {
        double all = columns.stream().mapToDouble(Column::share).sum();
        List<Double> edges = new ArrayList<>(List.of(left));
        for (Column column : columns) {
            edges.add(edges.get(edges.size() - 1) + wideMm * column.share() / all);
        }
        return edges;
    }

    private double headHighMm(double wideMm) {
        List<Double> edges = edges(0, wideMm);
        double lines = 1;
        for (int i = 0; i < columns.size(); i++) {
            lines = Math.max(
                    lines,
                    lines(List.of(columns.get(i).heading()), edges.get(i + 1) - edges.get(i))
                            .size());
        }
        return lines * LINE_MM + 2 * PAD_MM;
    }

    private double highMm(Row row, double wideMm) {
        List<Double> edges = edges(0, wideMm);
        boolean across = row.cells().size() == 1;
        double lines = 1;
        for (int i = 0; i < row.cells().size(); i++) {
            double wide = across ? wideMm : edges.get(i + 1) - edges.get(i);
            lines = Math.max(lines, lines(row.cells().get(i), wide).size());
        }
        double high = lines * LINE_MM + 2 * PAD_MM;
        return across ? high : Math.max(leastRowMm, high);
    }

    private static List<String> lines(List<String> paragraphs, double wideMm) {
        return paragraphs.stream()
                .flatMap(words -> FittedText.lines(words, wideMm - 2 * PAD_MM, CAP_MM).stream())
                .toList();
    }

    /** Words in a cell, the block of lines in the middle of its height. */
    private static void words(
            List<Mark> marks, Pen pen, List<String> paragraphs, double left, double right, double top, double highMm) {
        List<String> lines = lines(paragraphs, right - left);
        double y = top - (highMm - lines.size() * LINE_MM) / 2 - (LINE_MM - CAP_MM) / 2;
        for (String line : lines) {
            marks.add(new Text(pen, Vector2D.of(left + PAD_MM, y), line, CAP_MM, 0, Anchor.TOP_LEFT));
            y -= LINE_MM;
        }
    }
}
