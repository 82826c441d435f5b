package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The convex hull of points in the plane, by monotone chain (Andrew 1979). */
public final class ConvexRing {
    private ConvexRing() {}

    /**
     * Wraps points.
     *
     * @param points any points in mm
     * @return the hull's corners counter-clockwise, without corners on straight sides; fewer than three if the points
     *     are on one line
     */
    public static List<Vector2D> around(Collection<Vector2D> points) {
        List<Vector2D> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(Vector2D::getX).thenComparingDouble(Vector2D::getY));
        List<Vector2D> lower = chain(sorted);
        java.util.Collections.reverse(sorted);
        List<Vector2D> upper = chain(sorted);
        List<Vector2D> ring = new ArrayList<>(lower.subList(0, lower.size() - 1));
        ring.addAll(upper.subList(0, upper.size() - 1));
        return ring;
    }

    private static List<Vector2D> chain(List<Vector2D> sorted) {
        List<Vector2D> chain = new ArrayList<>();
        for (Vector2D point : sorted) {
            while (chain.size() > 1 && !turnsLeft(chain.get(chain.size() - 2), chain.get(chain.size() - 1), point)) {
                chain.remove(chain.size() - 1);
            }
            if (chain.isEmpty() || !chain.get(chain.size() - 1).equals(point)) {
                chain.add(point);
            }
        }
        return chain;
    }

    private static boolean turnsLeft(Vector2D a, Vector2D b, Vector2D c) {
        Vector2D along = c.subtract(a);
        return b.subtract(a).signedArea(along) > GeometryTolerance.ARITHMETIC_MM * along.norm();
    }
}
