package org.spile.geometry.kernel.planar;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Whether and where two segments in the plane meet. */
final class SegmentPair {
    private SegmentPair() {}

    /** The place where the closed segments ab and pq come within arithmetic tolerance, or null. */
    static Vector2D meeting(Vector2D a, Vector2D b, Vector2D p, Vector2D q) {
        if (apart(a.getX(), b.getX(), p.getX(), q.getX()) || apart(a.getY(), b.getY(), p.getY(), q.getY())) {
            return null;
        }
        Vector2D along = b.subtract(a);
        Vector2D other = q.subtract(p);
        double cross = along.signedArea(other);
        if (Math.abs(cross) > 1e-12 * along.norm() * other.norm()) {
            double t = p.subtract(a).signedArea(other) / cross;
            double s = p.subtract(a).signedArea(along) / cross;
            if (t >= 0 && t <= 1 && s >= 0 && s <= 1) {
                return a.add(along.multiply(t));
            }
        }
        return firstTouch(a, b, p, q);
    }

    private static Vector2D firstTouch(Vector2D a, Vector2D b, Vector2D p, Vector2D q) {
        if (onSegment(p, a, b)) {
            return p;
        }
        if (onSegment(q, a, b)) {
            return q;
        }
        if (onSegment(a, p, q)) {
            return a;
        }
        return onSegment(b, p, q) ? b : null;
    }

    private static boolean onSegment(Vector2D point, Vector2D a, Vector2D b) {
        Vector2D along = b.subtract(a);
        double t = point.subtract(a).dot(along) / along.normSq();
        Vector2D foot = a.add(along.multiply(Math.max(0, Math.min(1, t))));
        return foot.distance(point) <= GeometryTolerance.ARITHMETIC_MM;
    }

    private static boolean apart(double a, double b, double p, double q) {
        return Math.max(a, b) + GeometryTolerance.ARITHMETIC_MM < Math.min(p, q)
                || Math.max(p, q) + GeometryTolerance.ARITHMETIC_MM < Math.min(a, b);
    }
}
