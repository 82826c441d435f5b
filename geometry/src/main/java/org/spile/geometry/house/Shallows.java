package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;

/**
 * Where the depth between two surfaces is less than asked. Between the lines over which it turns the depth is a plane, so
 * there the border is a straight line; as exact as {@link Depths}.
 */
final class Shallows {
    private final Depths depths;
    private final double depthMm;

    private Shallows(Depths depths, double depthMm) {
        this.depths = depths;
        this.depthMm = depthMm;
    }

    static List<Outline> of(Depths depths, Outline plan, double depthMm) {
        Shallows shallows = new Shallows(depths, depthMm);
        List<Outline> found = new ArrayList<>();
        List<Double> xs = ends(depths.turns(Axis.X), plan.minX(), plan.maxX());
        List<Double> ys = ends(depths.turns(Axis.Y), plan.minY(), plan.maxY());
        for (int i = 0; i + 1 < xs.size(); i++) {
            for (int j = 0; j + 1 < ys.size(); j++) {
                shallows.cell(xs.get(i), ys.get(j), xs.get(i + 1), ys.get(j + 1), found);
            }
        }
        return found.isEmpty() ? found : Regions.intersection(found, List.of(plan));
    }

    private static List<Double> ends(Set<Double> turns, double from, double to) {
        List<Double> ends = new ArrayList<>(List.of(from));
        turns.stream().filter(at -> at > from && at < to).forEach(ends::add);
        ends.add(to);
        return ends;
    }

    private void cell(double x0, double y0, double x1, double y1, List<Outline> into) {
        double x = (x0 + x1) / 2;
        double y = (y0 + y1) / 2;
        double middle = lacks(x, y);
        double perX = (lacks(x + (x1 - x0) / 4, y) - lacks(x - (x1 - x0) / 4, y)) / ((x1 - x0) / 2);
        double perY = (lacks(x, y + (y1 - y0) / 4) - lacks(x, y - (y1 - y0) / 4)) / ((y1 - y0) / 2);
        List<Vector2D> ring =
                List.of(Vector2D.of(x0, y0), Vector2D.of(x1, y0), Vector2D.of(x1, y1), Vector2D.of(x0, y1));
        List<Vector2D> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % ring.size());
            double atA = middle + perX * (a.getX() - x) + perY * (a.getY() - y);
            double atB = middle + perX * (b.getX() - x) + perY * (b.getY() - y);
            if (atA > 0) {
                kept.add(a);
            }
            if (atA > 0 != atB > 0 && atA != 0 && atB != 0) {
                kept.add(a.lerp(b, atA / (atA - atB)));
            }
        }
        if (kept.size() > 2 && Outline.check(kept).isEmpty()) {
            into.add(Outline.of(kept));
        }
    }

    /** What the depth is short by at a place; a millionth short is enough. */
    private double lacks(double x, double y) {
        return depthMm - depths.at(Vector2D.of(x, y)).depth().valueMm() - GeometryTolerance.CONTACT_MM;
    }
}
