package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.View;

/** Figures one under the other at the foot of the views' room. */
final class Figures {
    private static final double GAP_MM = 6;

    private Figures() {}

    /**
     * Figures in a room.
     *
     * @param views room that is left above them
     * @param figures each in its place, drawn at full size
     */
    record Placed(Extent views, List<View> figures) {}

    /**
     * Puts figures at the foot of the views' room; without views, at its head.
     *
     * @param figures from the top; none leaves all the room
     * @param alone whether there are no views
     * @return empty if they don't fit
     */
    static Optional<Placed> under(Extent views, List<Figure> figures, boolean alone) {
        double wide = views.wide();
        if (figures.stream().anyMatch(figure -> figure.leastWideMm() > wide)) {
            return Optional.empty();
        }
        double high = figures.stream()
                .mapToDouble(figure -> figure.highMm(wide) + GAP_MM)
                .sum();
        if (high > views.high()) {
            return Optional.empty();
        }
        List<View> placed = new ArrayList<>();
        double top = alone ? views.maxY() : views.minY() + high;
        double y = alone ? top : top - GAP_MM;
        for (Figure figure : figures) {
            double figureHigh = figure.highMm(wide);
            List<Mark> marks = figure.marks(Vector2D.ZERO, wide);
            Extent window = around(marks);
            placed.add(new View(
                    "figure-" + (placed.size() + 1),
                    "",
                    Scale.FULL,
                    window,
                    Vector2D.of(views.minX(), y).add(window.corner()),
                    marks,
                    false));
            y -= figureHigh + GAP_MM;
        }
        return Optional.of(
                new Placed(new Extent(views.minX(), Math.min(top, views.maxY()), views.maxX(), views.maxY()), placed));
    }

    /** All that is drawn, with half the widest line round it. */
    private static Extent around(List<Mark> marks) {
        List<Vector2D> corners = new ArrayList<>();
        for (Mark mark : marks) {
            for (Stroke stroke : mark.strokes()) {
                stroke.patches(1).forEach(patch -> corners.addAll(patch.corners()));
            }
        }
        return Extent.around(corners).grown(0.35);
    }
}
