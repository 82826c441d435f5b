package org.spile.geometry.kernel.planar;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Corner coordinates in primitive arrays, as the inner loops want them; a point is a ring of one corner, a segment a
 * ring of two.
 */
final class Rings {
    final double[] x;
    final double[] y;
    /** The corner after each corner on its ring. */
    final int[] next;

    private final boolean convex;
    private final double minX;
    private final double minY;
    private final double maxX;
    private final double maxY;

    private Rings(double[] x, double[] y, int[] next, boolean convex) {
        this.x = x;
        this.y = y;
        this.next = next;
        this.convex = convex;
        this.minX = least(x);
        this.minY = least(y);
        this.maxX = greatest(x);
        this.maxY = greatest(y);
    }

    static Rings of(List<Vector2D> shell, List<List<Vector2D>> holes) {
        int count = shell.size() + holes.stream().mapToInt(List::size).sum();
        double[] x = new double[count];
        double[] y = new double[count];
        int[] next = new int[count];
        int at = fill(shell, 0, x, y, next);
        for (List<Vector2D> hole : holes) {
            at = fill(hole, at, x, y, next);
        }
        return new Rings(x, y, next, holes.isEmpty() && turnsLeftEverywhere(shell));
    }

    private static int fill(List<Vector2D> ring, int start, double[] x, double[] y, int[] next) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            x[start + i] = ring.get(i).getX();
            y[start + i] = ring.get(i).getY();
            next[start + i] = start + (i + 1) % n;
        }
        return start + n;
    }

    private static boolean turnsLeftEverywhere(List<Vector2D> ring) {
        int n = ring.size();
        for (int i = 0; n > 3 && i < n; i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % n);
            Vector2D c = ring.get((i + 2) % n);
            double inward = -b.subtract(a).signedArea(c.subtract(a)) / c.distance(a);
            if (inward > GeometryTolerance.CONTACT_MM / 10) {
                return false;
            }
        }
        return true;
    }

    int count() {
        return x.length;
    }

    boolean convex() {
        return convex;
    }

    double minX() {
        return minX;
    }

    double minY() {
        return minY;
    }

    double maxX() {
        return maxX;
    }

    double maxY() {
        return maxY;
    }

    /** Even-odd rule, with the boundary (within arithmetic tolerance) counted as inside. */
    boolean contains(double px, double py) {
        boolean inside = false;
        for (int i = 0; i < x.length; i++) {
            int j = next[i];
            if (squaredToSide(i, px, py) <= GeometryTolerance.ARITHMETIC_MM * GeometryTolerance.ARITHMETIC_MM) {
                return true;
            }
            if (y[i] > py != y[j] > py && px < x[i] + (py - y[i]) / (y[j] - y[i]) * (x[j] - x[i])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Squared distance from a point to the side that starts at a corner. */
    double squaredToSide(int corner, double px, double py) {
        int j = next[corner];
        double ex = x[j] - x[corner];
        double ey = y[j] - y[corner];
        double qx = px - x[corner];
        double qy = py - y[corner];
        double length2 = ex * ex + ey * ey;
        double t = length2 > 0 ? Math.max(0, Math.min(1, (qx * ex + qy * ey) / length2)) : 0;
        double dx = qx - t * ex;
        double dy = qy - t * ey;
        return dx * dx + dy * dy;
    }

    private static double least(double[] values) {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double greatest(double[] values) {
        double greatest = values[0];
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }
}
