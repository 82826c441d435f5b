package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The least shift that frees one core from another when at least one of them is not convex.
 *
 * <p>B shifted by t overlaps A exactly if t lies inside one of the convex sums A_i ⊕ −B_j of their convex parts. The
 * nearest free shift therefore lies on a side of one of these sums, where no other sum covers it: each side is clipped
 * by every other sum (Cyrus, Beck 1978) and the rest nearest to the origin is kept. Exact for cores; with radii the
 * depth is at least the core's depth and the radii, and equal to it if that shift proves free.
 */
final class PlanarEscape {
    /** Half the width given to a point or segment core, so that the sums have an inside, in mm. */
    private static final double THICKENING_MM = 1e-4;

    private final Vector2D shift;
    private final Vector2D direction;
    private final double depthMm;
    private final double slackMm;

    private PlanarEscape(Vector2D shift, Vector2D direction, double depthMm, double slackMm) {
        this.shift = shift;
        this.direction = direction;
        this.depthMm = depthMm;
        this.slackMm = slackMm;
    }

    /** For cores that overlap. */
    static PlanarEscape from(Footprint a, Footprint b) {
        List<List<Vector2D>> sums = new ArrayList<>();
        for (Footprint partA : a.convexParts()) {
            for (Footprint partB : b.convexParts()) {
                sums.add(difference(corners(partA), corners(partB)));
            }
        }
        Vector2D best = null;
        Vector2D outward = Vector2D.of(1, 0);
        for (List<Vector2D> sum : sums) {
            for (int i = 0; i < sum.size(); i++) {
                Vector2D p = sum.get(i);
                Vector2D q = sum.get((i + 1) % sum.size());
                double bound = best == null ? Double.POSITIVE_INFINITY : best.norm();
                Vector2D free = nearestFree(p, q, sum, sums, bound);
                if (free != null) {
                    best = free;
                    outward = Vector2D.of(q.getY() - p.getY(), p.getX() - q.getX())
                            .normalize();
                }
            }
        }
        double radii = a.radiusMm() + b.radiusMm();
        Vector2D direction = best.norm() > GeometryTolerance.CONTACT_MM ? best.normalize() : outward;
        double depth = best.norm() + radii;
        double slack = a.cornerCount() <= 2 || b.cornerCount() <= 2 ? THICKENING_MM * Math.sqrt(2) : 0;
        return new PlanarEscape(direction.multiply(depth), direction, depth, slack);
    }

    /** For cores that are apart by less than their radii: the way straight back. */
    static PlanarEscape along(Footprint a, Footprint b, double shiftX, double shiftY, double depthMm) {
        Vector2D shift = Vector2D.of(shiftX, shiftY);
        return new PlanarEscape(shift, shift.normalize(), depthMm, 0);
    }

    void report(PlanarGap gap, Footprint a, Footprint b) {
        Footprint moved = b.mapped(1, 0, 0, 1, shift.getX(), shift.getY());
        PlanarGap after = new PlanarGap();
        boolean free = isFree(after, a, moved);
        double lower = free ? -depthMm : -boundsShift(a, b);
        gap.report(
                Math.min(lower, -depthMm),
                Math.min(0, slackMm - depthMm),
                after.onAx(),
                after.onAy(),
                after.onBx() - shift.getX(),
                after.onBy() - shift.getY(),
                direction.getX(),
                direction.getY());
    }

    /** Measures after the shift by convex parts, which needs no escape of its own. */
    private static boolean isFree(PlanarGap after, Footprint a, Footprint moved) {
        PlanarGap part = new PlanarGap();
        double least = Double.POSITIVE_INFINITY;
        for (Footprint partA : a.convexParts()) {
            for (Footprint partB : moved.convexParts()) {
                part.measure(partA, partB);
                if (part.distanceMm() < least) {
                    least = part.distanceMm();
                    after.report(
                            least,
                            least,
                            part.onAx(),
                            part.onAy(),
                            part.onBx(),
                            part.onBy(),
                            part.directionX(),
                            part.directionY());
                }
            }
        }
        return least > -GeometryTolerance.CONTACT_MM / 10;
    }

    /** A shift that surely frees: past the other's bounds. */
    private static double boundsShift(Footprint a, Footprint b) {
        return Math.min(
                Math.min(a.maxX() - b.minX(), b.maxX() - a.minX()), Math.min(a.maxY() - b.minY(), b.maxY() - a.minY()));
    }

    /** The point of side pq nearest to the origin that no sum covers, if nearer than the bound; else null. */
    private static Vector2D nearestFree(
            Vector2D p, Vector2D q, List<Vector2D> own, List<List<Vector2D>> sums, double bound) {
        Vector2D along = q.subtract(p);
        double foot = Math.max(0, Math.min(1, -p.dot(along) / along.normSq()));
        if (p.add(along.multiply(foot)).norm() >= bound) {
            return null;
        }
        List<double[]> covered = new ArrayList<>();
        for (List<Vector2D> sum : sums) {
            double[] interval = sum == own ? null : coveredBy(sum, p, along);
            if (interval != null) {
                covered.add(interval);
            }
        }
        covered.sort(Comparator.comparingDouble(i -> i[0]));
        double below = foot;
        double above = foot;
        for (double[] interval : covered) {
            if (interval[0] < above && above < interval[1]) {
                above = interval[1];
            }
        }
        covered.sort(Comparator.comparingDouble(i -> -i[1]));
        for (double[] interval : covered) {
            if (interval[0] < below && below < interval[1]) {
                below = interval[0];
            }
        }
        Vector2D best = null;
        for (double t : new double[] {below, above}) {
            Vector2D at = p.add(along.multiply(t));
            if (t >= 0 && t <= 1 && at.norm() < bound && (best == null || at.norm() < best.norm())) {
                best = at;
            }
        }
        return best;
    }

    /** The open interval of parameters at which p + t·along lies inside a convex ring, or null. */
    private static double[] coveredBy(List<Vector2D> ring, Vector2D p, Vector2D along) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            Vector2D corner = ring.get(i);
            Vector2D side = ring.get((i + 1) % ring.size()).subtract(corner).normalize();
            double inward = side.signedArea(p.subtract(corner)) - GeometryTolerance.ARITHMETIC_MM;
            double slope = side.signedArea(along);
            if (Math.abs(slope) < 1e-14 * along.norm()) {
                if (inward <= 0) {
                    return null;
                }
            } else if (slope > 0) {
                from = Math.max(from, -inward / slope);
            } else {
                to = Math.min(to, -inward / slope);
            }
        }
        return from < to ? new double[] {from, to} : null;
    }

    private static List<Vector2D> corners(Footprint part) {
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < part.cornerCount(); i++) {
            Vector2D corner = Vector2D.of(part.x(i), part.y(i));
            if (part.cornerCount() > 2) {
                corners.add(corner);
            } else {
                for (int k = 0; k < 4; k++) {
                    double dx = k % 2 == 0 ? THICKENING_MM : -THICKENING_MM;
                    double dy = k < 2 ? THICKENING_MM : -THICKENING_MM;
                    corners.add(corner.add(Vector2D.of(dx, dy)));
                }
            }
        }
        return corners;
    }

    /** The convex hull of all differences, by monotone chain (Andrew 1979). */
    private static List<Vector2D> difference(List<Vector2D> a, List<Vector2D> b) {
        List<Vector2D> points = new ArrayList<>();
        for (Vector2D p : a) {
            for (Vector2D q : b) {
                points.add(p.subtract(q));
            }
        }
        return ConvexRing.around(points);
    }
}
