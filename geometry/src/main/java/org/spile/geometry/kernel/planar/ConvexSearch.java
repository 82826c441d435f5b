package org.spile.geometry.kernel.planar;

/**
 * The nearest points of two convex rings that are surely apart, without trying all corners against all sides: the
 * simplex method in the plane (Gilbert, Johnson, Keerthi 1988), where a simplex is a corner or a side of A − B.
 *
 * <p>It answers only if its two bounds agree, v·w/|v| ≤ distance ≤ |v| (van den Bergen 1999, equation 2), to the
 * arithmetic tolerance; near contact and overlap are left to the caller. No allocation.
 */
final class ConvexSearch {
    private static final int MOST_STEPS = 40;
    private static final double CLOSE = GeometryTolerance.ARITHMETIC_MM;

    private Rings a;
    private Rings b;
    /** The corners of A and B that make each of the two ends of the simplex, and the ends themselves. */
    private int a0;

    private int b0;
    private int a1;
    private int b1;
    private double x0;
    private double y0;
    private double x1;
    private double y1;

    private int supportA;
    private int supportB;

    /** Where the nearest point lies between the two ends, 0 if there is one end. */
    private double t;

    private double vx;
    private double vy;

    double distance;

    /** Whether the rings are surely apart, with {@link #distance} between them. */
    boolean areApart(Rings first, Rings second) {
        a = first;
        b = second;
        support(
                second.minX() + second.maxX() - first.minX() - first.maxX(),
                second.minY() + second.maxY() - first.minY() - first.maxY());
        dropToSupport();
        boolean single = true;
        double lower = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            distance = Math.sqrt(vx * vx + vy * vy);
            if (distance <= CLOSE) {
                return false;
            }
            support(-vx, -vy);
            double wx = a.x[supportA] - b.x[supportB];
            double wy = a.y[supportA] - b.y[supportB];
            lower = Math.max(lower, (vx * wx + vy * wy) / distance);
            boolean repeated = (supportA == a0 && supportB == b0) || (supportA == a1 && supportB == b1);
            if (distance - lower <= CLOSE / 10 || repeated) {
                return distance - lower <= CLOSE;
            }
            if (!single && holdsOrigin(wx, wy)) {
                return false;
            }
            if (!single && squaredTo(x0, y0, wx, wy) >= squaredTo(x1, y1, wx, wy)) {
                a0 = a1;
                b0 = b1;
                x0 = x1;
                y0 = y1;
            }
            a1 = supportA;
            b1 = supportB;
            x1 = wx;
            y1 = wy;
            single = nearest();
        }
        return false;
    }

    private void dropToSupport() {
        a0 = supportA;
        b0 = supportB;
        a1 = a0;
        b1 = b0;
        x0 = a.x[a0] - b.x[b0];
        y0 = a.y[a0] - b.y[b0];
        t = 0;
        vx = x0;
        vy = y0;
    }

    /** Finds the point between the two ends nearest to the origin; true if it is one of them, which is then kept. */
    private boolean nearest() {
        double ex = x1 - x0;
        double ey = y1 - y0;
        double along = -(x0 * ex + y0 * ey);
        double length2 = ex * ex + ey * ey;
        if (along <= 0 || along >= length2) {
            if (along > 0) {
                a0 = a1;
                b0 = b1;
                x0 = x1;
                y0 = y1;
            }
            a1 = a0;
            b1 = b0;
            t = 0;
            vx = x0;
            vy = y0;
            return true;
        }
        t = along / length2;
        double scale = (x0 * ey - y0 * ex) / length2;
        vx = ey * scale;
        vy = -ex * scale;
        return false;
    }

    private boolean holdsOrigin(double wx, double wy) {
        double first = x0 * y1 - y0 * x1;
        double second = x1 * wy - y1 * wx;
        double third = wx * y0 - wy * x0;
        return (first >= 0 && second >= 0 && third >= 0) || (first <= 0 && second <= 0 && third <= 0);
    }

    private static double squaredTo(double px, double py, double qx, double qy) {
        double ex = qx - px;
        double ey = qy - py;
        double along = -(px * ex + py * ey);
        double length2 = ex * ex + ey * ey;
        if (along <= 0) {
            return px * px + py * py;
        }
        if (along >= length2) {
            return qx * qx + qy * qy;
        }
        double cross = px * ey - py * ex;
        return cross * cross / length2;
    }

    private void support(double dx, double dy) {
        supportA = extreme(a.x, a.y, dx, dy);
        supportB = extreme(b.x, b.y, -dx, -dy);
    }

    private static int extreme(double[] x, double[] y, double dx, double dy) {
        int best = 0;
        double far = x[0] * dx + y[0] * dy;
        for (int i = 1; i < x.length; i++) {
            double value = x[i] * dx + y[i] * dy;
            if (value > far) {
                far = value;
                best = i;
            }
        }
        return best;
    }

    double onAx() {
        return a.x[a0] + t * (a.x[a1] - a.x[a0]);
    }

    double onAy() {
        return a.y[a0] + t * (a.y[a1] - a.y[a0]);
    }

    double onBx() {
        return b.x[b0] + t * (b.x[b1] - b.x[b0]);
    }

    double onBy() {
        return b.y[b0] + t * (b.y[b1] - b.y[b0]);
    }

    double directionX() {
        return -vx / distance;
    }

    double directionY() {
        return -vy / distance;
    }
}
