package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Mark;

/** Rows stacked from the top into columns side by side. */
final class Columns {
    private Columns() {}

    /**
     * The rows in a rectangle.
     *
     * @param rows in reading order
     * @param area where they go (mm)
     * @param columnWideMm width of a column
     * @param gapMm between columns
     * @return empty if they don't fit
     */
    static Optional<List<Mark>> fill(List<PanelRows.Row> rows, Extent area, double columnWideMm, double gapMm) {
        var marks = new ArrayList<Mark>();
        var x = area.minX();
        var y = area.maxY();
        for (var i = 0; i < rows.size(); i++) {
            if (y - together(rows, i) < area.minY() - 1e-9 && y < area.maxY()) {
                x += columnWideMm + gapMm;
                y = area.maxY();
            }
            // A heading alone in a column, its words in the next, is worse than no room.
            if (x + columnWideMm > area.maxX() + 1e-9 || y - together(rows, i) < area.minY() - 1e-9) {
                return Optional.empty();
            }
            marks.addAll(rows.get(i).picture().at(Vector2D.of(x, y)));
            y -= rows.get(i).highMm();
        }
        return Optional.of(marks);
    }

    /** Height of a row with all that must stay with it. */
    private static double together(List<PanelRows.Row> rows, int first) {
        var high = 0.0;
        for (var i = first; i < rows.size(); i++) {
            high += rows.get(i).highMm();
            if (!rows.get(i).staysWithNext()) {
                break;
            }
        }
        return high;
    }

    /** Height of all rows in one column. */
    static double high(List<PanelRows.Row> rows) {
        return rows.stream().mapToDouble(PanelRows.Row::highMm).sum();
    }
}
