package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.spile.exporters.drawing.Stroke;

/**
 * The cutting planes of a view. Those of one direction whose heads would lie on each other stand in steps, the foremost
 * nearest to the view, so that no arrow crosses the line of another.
 */
final class CuttingPlanes {
    /** How far along the view an arrow and its letter reach, with room to the next plane's line. */
    private static final double HEAD_MM = 10;

    private final List<CuttingPlane> planes;

    CuttingPlanes(List<CuttingPlane> planes) {
        this.planes = List.copyOf(planes);
    }

    /**
     * What is drawn of them.
     *
     * @param unit how much of the model a millimetre of paper shows
     */
    List<Stroke> strokes(double unit) {
        List<CuttingPlane> foremostFirst = planes.stream()
                .sorted(Comparator.comparing(CuttingPlane::looks)
                        .thenComparing(CuttingPlane::forwardMm, Comparator.reverseOrder()))
                .toList();
        List<Stroke> strokes = new ArrayList<>();
        CuttingPlane before = null;
        int step = 0;
        for (CuttingPlane plane : foremostFirst) {
            boolean near = before != null
                    && before.looks() == plane.looks()
                    && before.forwardMm() - plane.forwardMm() < HEAD_MM * unit;
            step = near ? step + 1 : 0;
            before = plane;
            strokes.addAll(plane.strokes(unit, step));
        }
        return strokes;
    }
}
