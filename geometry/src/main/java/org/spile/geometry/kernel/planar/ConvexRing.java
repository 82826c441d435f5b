package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
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
        Collections.reverse(sorted);
        List<Vector2D> upper = chain(sorted);
        List<Vector2D> ring = new ArrayList<>(lower.subList(0, lower.size() - 1));
        ring.addAll(upper.subList(0, upper.size() - 1));
        return withoutStraight(ring);
    }

    /**
     * Turns are judged without tolerance: of points on one upright side that rounding has put out of order a tolerance
     * would drop the outermost.
     */
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
        return b.subtract(a).signedArea(c.subtract(a)) > 0;
    }

    /** The same without corners that lie on the line between their neighbours. */
    private static List<Vector2D> withoutStraight(List<Vector2D> ring) {
        List<Vector2D> left = new ArrayList<>(ring);
        int i = 0;
        int kept = 0;
        while (left.size() > 2 && kept < left.size()) {
            int n = left.size();
            if (between(left.get((i + n - 1) % n), left.get(i), left.get((i + 1) % n))) {
                left.remove(i);
                i = i == 0 ? 0 : i - 1;
                kept = 0;
            } else {
                i++;
                kept++;
            }
            i %= left.size();
        }
        return left;
    }

    private static boolean between(Vector2D a, Vector2D b, Vector2D c) {
        Vector2D along = c.subtract(a);
        Vector2D here = b.subtract(a);
        double share = here.dot(along);
        return Math.abs(here.signedArea(along)) <= GeometryTolerance.ARITHMETIC_MM * along.norm()
                && share >= 0
                && share <= along.normSq();
    }
}
