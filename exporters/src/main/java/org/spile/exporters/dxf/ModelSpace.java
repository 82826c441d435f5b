package org.spile.exporters.dxf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.View;

/**
 * Where each view of all sheets lies in the one model space, at 1:1.
 *
 * <p>A view in the site's own coordinates stays there, unless another one already does: then it is moved aside, like every
 * other view, below all that are in place, one row a sheet. Each viewport notes the shift in its extended data.
 */
final class ModelSpace {
    private static final double GAP_SHARE = 0.05;
    private static final double LEAST_WIDE_MM = 1000;

    private final List<Placed> views = new ArrayList<>();

    /**
     * A view in model space.
     *
     * @param sheet the sheet it is on
     * @param view the view
     * @param shift from the view's coordinates to model space (mm)
     */
    record Placed(Sheet sheet, View view, Vector2D shift) {
        Extent window() {
            return view.window().shifted(shift);
        }
    }

    private ModelSpace() {}

    static ModelSpace of(List<Sheet> sheets) {
        var space = new ModelSpace();
        var moved = new LinkedHashMap<String, List<Placed>>();
        for (var sheet : sheets) {
            for (var view : sheet.views()) {
                var inPlace = new Placed(sheet, view, Vector2D.ZERO);
                var free =
                        space.views.stream().noneMatch(other -> other.window().overlaps(view.window()));
                if (view.inPlace() && free) {
                    space.views.add(inPlace);
                } else {
                    moved.computeIfAbsent(sheet.name(), none -> new ArrayList<>())
                            .add(inPlace);
                }
            }
        }
        space.below(List.copyOf(moved.values()));
        return space;
    }

    /** One row a sheet, each below the one before. */
    private void below(List<List<Placed>> rows) {
        var base = views.isEmpty() ? new Extent(0, 0, 0, 0) : extent();
        var gap = GAP_SHARE * Math.max(base.wide(), LEAST_WIDE_MM);
        var top = views.isEmpty() ? 0 : base.minY() - gap;
        for (var row : rows) {
            var x = base.minX();
            var high = 0.0;
            for (var placed : row) {
                var window = placed.view().window();
                var shift = Vector2D.of(x - window.minX(), top - window.maxY());
                views.add(new Placed(placed.sheet(), placed.view(), shift));
                x += window.wide() + gap;
                high = Math.max(high, window.high());
            }
            top -= high + gap;
        }
    }

    /** All views, in the order they are written. */
    List<Placed> views() {
        return List.copyOf(views);
    }

    /** The views of a sheet. */
    List<Placed> of(Sheet sheet) {
        return views.stream().filter(placed -> placed.sheet().equals(sheet)).toList();
    }

    /** All that is drawn; a unit square if nothing is. */
    Extent extent() {
        return views.stream().map(Placed::window).reduce(Extent::and).orElse(new Extent(0, 0, 1, 1));
    }

    /** The views' scales, model millimetres for one on paper, each once, in order. */
    List<Double> units() {
        return views.stream()
                .map(placed -> placed.view().unitsPerMm())
                .distinct()
                .toList();
    }
}
