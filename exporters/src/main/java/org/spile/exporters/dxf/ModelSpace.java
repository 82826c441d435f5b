package org.spile.exporters.dxf;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.View;

/**
 * Where each view of all sheets lies in the one model space, at 1:1.
 *
 * <p>A view in the site's own coordinates stays there, unless another one already does: then it is moved aside, like every
 * other view, to the right of all before it. Each viewport notes the shift in its extended data.
 */
final class ModelSpace {
    private static final double GAP_SHARE = 0.1;

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
        var moved = new ArrayList<Placed>();
        for (var sheet : sheets) {
            for (var view : sheet.views()) {
                var inPlace = new Placed(sheet, view, Vector2D.ZERO);
                var free =
                        space.views.stream().noneMatch(other -> other.window().overlaps(view.window()));
                (view.inPlace() && free ? space.views : moved).add(inPlace);
            }
        }
        moved.forEach(space::beside);
        return space;
    }

    private void beside(Placed placed) {
        var window = placed.view().window();
        if (views.isEmpty()) {
            views.add(placed);
            return;
        }
        var all = extent();
        var shift = Vector2D.of(all.maxX() + GAP_SHARE * all.wide() - window.minX(), all.minY() - window.minY());
        views.add(new Placed(placed.sheet(), placed.view(), shift));
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
