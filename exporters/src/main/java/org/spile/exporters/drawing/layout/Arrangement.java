package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.View;

/**
 * Views in rows, in reading order, inside a rectangle: the breaks between rows that leave the views the most room round
 * them.
 */
final class Arrangement {
    private static final double GAP_MM = 8;
    /** With more views than this, not all ways to break them into rows are tried. */
    private static final int MOST_TRIED = 12;

    private Arrangement() {}

    /**
     * The views in their places.
     *
     * @param views at their scales, anywhere
     * @param area where they go (mm)
     * @return empty if they don't fit
     */
    static Optional<List<View>> fit(List<View> views, Extent area) {
        List<List<View>> best = null;
        var bestSlack = -1.0;
        var ways = views.size() <= MOST_TRIED ? 1 << Math.max(0, views.size() - 1) : 1;
        for (var way = 0; way < ways; way++) {
            var rows = views.size() <= MOST_TRIED ? broken(views, way) : filled(views, area);
            var slack = slack(rows, area);
            if (slack >= 0 && slack > bestSlack + 1e-9) {
                best = rows;
                bestSlack = slack;
            }
        }
        return best == null ? Optional.empty() : Optional.of(spread(best, area));
    }

    /** One way to break: a bit of the number for each place between two views. */
    private static List<List<View>> broken(List<View> views, int way) {
        var rows = new ArrayList<List<View>>();
        for (var i = 0; i < views.size(); i++) {
            if (i == 0 || (way >> (i - 1) & 1) == 1) {
                rows.add(new ArrayList<>());
            }
            rows.get(rows.size() - 1).add(views.get(i));
        }
        return rows;
    }

    private static List<List<View>> filled(List<View> views, Extent area) {
        var rows = new ArrayList<List<View>>();
        var left = -1.0;
        for (var view : views) {
            var wide = view.onPaper().wide();
            if (wide > left) {
                rows.add(new ArrayList<>());
                left = area.wide();
            }
            rows.get(rows.size() - 1).add(view);
            left -= wide + GAP_MM;
        }
        return rows;
    }

    /** The lesser of the rooms left over, across and up, as a share; below 0 if something does not fit. */
    private static double slack(List<List<View>> rows, Extent area) {
        var high = (rows.size() - 1) * GAP_MM;
        var wide = 0.0;
        for (var row : rows) {
            high += high(row);
            wide = Math.max(wide, wide(row));
        }
        return Math.min((area.wide() - wide) / area.wide(), (area.high() - high) / area.high());
    }

    private static double high(List<View> row) {
        return row.stream().mapToDouble(view -> view.onPaper().high()).max().orElse(0);
    }

    private static double wide(List<View> row) {
        return row.stream().mapToDouble(view -> view.onPaper().wide()).sum() + (row.size() - 1) * GAP_MM;
    }

    /** Spreads what room is left evenly; views of a row stand on one line, so that their titles do. */
    private static List<View> spread(List<List<View>> rows, Extent area) {
        var placed = new ArrayList<View>();
        var freeHigh =
                area.high() - rows.stream().mapToDouble(Arrangement::high).sum();
        var gapHigh = freeHigh / (rows.size() + 1);
        var y = area.maxY();
        for (var row : rows) {
            y -= gapHigh + high(row);
            var views = row.stream().mapToDouble(view -> view.onPaper().wide()).sum();
            var gapWide = (area.wide() - views) / (row.size() + 1);
            var x = area.minX();
            for (var view : row) {
                x += gapWide;
                placed.add(view.placed(Vector2D.of(x, y)));
                x += view.onPaper().wide();
            }
        }
        return placed;
    }
}
