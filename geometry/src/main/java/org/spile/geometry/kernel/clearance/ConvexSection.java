package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.ConvexRing;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The section of one convex solid by a plane.
 *
 * <p>A sharp solid's section is the hull of the places where lines between corners on opposite sides pass the plane. A
 * round one's is wrapped in tangents: the section reaches in direction u as far as the least, over all λ, of the
 * solid's own reach in u + λn (n the plane's normal), by the duality of Rockafellar, Convex Analysis (1970), theorem
 * 16.4. That least is of a convex function, found by golden section. Tangents are added where neighbours meet too far
 * outside, and the flat sides' normals are always among them, so flats stay exact.
 */
final class ConvexSection {
    private static final int FIRST_TANGENTS = 16;
    private static final int MOST_HALVINGS = 12;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final ConvexCore core;
    private final CutPlane plane;
    private final Vector3D normal;
    private final List<Vector3D> corners = new ArrayList<>();

    ConvexSection(ConvexCore core, CutPlane plane) {
        this.core = core;
        this.plane = plane;
        this.normal = plane.normal();
        for (int i = 0; i < core.count(); i++) {
            corners.add(Vector3D.of(core.x(i), core.y(i), core.z(i)).subtract(plane.origin()));
        }
    }

    Optional<Outline> outline() {
        double slack = GeometryTolerance.CONTACT_MM;
        if (reach(normal) <= slack || reach(normal.negate()) <= slack) {
            return Optional.empty();
        }
        List<Vector2D> points = core.discMm() > 0 || core.roundMm() > 0 ? wrapped() : passed();
        List<Vector2D> ring = ConvexRing.around(points);
        return ring.size() < 3 || Outline.check(ring).isPresent() ? Optional.empty() : Optional.of(Outline.of(ring));
    }

    // ---- sharp --------------------------------------------------------------------------------------------------

    private List<Vector2D> passed() {
        List<Vector2D> points = new ArrayList<>();
        for (Vector3D p : corners) {
            double below = p.dot(normal);
            if (below == 0) {
                points.add(flat(p));
            }
            for (Vector3D q : corners) {
                double above = q.dot(normal);
                if (below < 0 && above > 0) {
                    points.add(flat(p.add(q.subtract(p).multiply(-below / (above - below)))));
                }
            }
        }
        return points;
    }

    private Vector2D flat(Vector3D point) {
        return Vector2D.of(point.dot(plane.right()), point.dot(plane.up()));
    }

    // ---- round --------------------------------------------------------------------------------------------------

    private List<Vector2D> wrapped() {
        List<Double> angles = angles();
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < angles.size(); i++) {
            double from = angles.get(i);
            double to = i + 1 < angles.size() ? angles.get(i + 1) : angles.get(0) + 2 * Math.PI;
            wrap(from, reachInPlane(from), to, reachInPlane(to), MOST_HALVINGS, points);
        }
        return points;
    }

    /** Adds the corner where two tangents meet, or more tangents between them if it stands out too far. */
    private void wrap(double from, double reachFrom, double to, double reachTo, int halvings, List<Vector2D> points) {
        Vector2D corner = meeting(from, reachFrom, to, reachTo);
        double middle = (from + to) / 2;
        double reach = reachInPlane(middle);
        if (corner.dot(direction(middle)) - reach > Cut.SAGITTA_MM / 2 && halvings > 0) {
            wrap(from, reachFrom, middle, reach, halvings - 1, points);
            wrap(middle, reach, to, reachTo, halvings - 1, points);
        } else {
            points.add(corner);
        }
    }

    private static Vector2D meeting(double a, double reachA, double b, double reachB) {
        double sin = StrictMath.sin(b - a);
        return Vector2D.of(
                (reachA * StrictMath.sin(b) - reachB * StrictMath.sin(a)) / sin,
                (reachB * StrictMath.cos(a) - reachA * StrictMath.cos(b)) / sin);
    }

    /** Evenly spread directions, and those of all flat sides in place of the ones next to them. */
    private List<Double> angles() {
        List<Double> exact = new ArrayList<>();
        for (int i = 0; i < core.normalCount(); i++) {
            addBoth(Vector3D.of(core.normal(i, 0), core.normal(i, 1), core.normal(i, 2)), exact);
        }
        if (core.discMm() > 0) {
            addBoth(core.axis().cross(normal), exact);
        }
        List<Double> all = new ArrayList<>();
        exact.stream().sorted().forEach(angle -> addUnlessNear(angle, 1e-7, all));
        for (int i = 0; i < FIRST_TANGENTS; i++) {
            addUnlessNear(2 * Math.PI * i / FIRST_TANGENTS, 1e-3, all);
        }
        all.sort(Double::compare);
        return all;
    }

    private void addBoth(Vector3D direction, List<Double> angles) {
        Vector2D across = flat(direction);
        if (across.norm() > 1e-9) {
            double angle = StrictMath.atan2(across.getY(), across.getX());
            angles.add(angle < 0 ? angle + 2 * Math.PI : angle);
            angles.add(angle < 0 ? angle + Math.PI : (angle + Math.PI) % (2 * Math.PI));
        }
    }

    private static void addUnlessNear(double angle, double distance, List<Double> angles) {
        for (double other : angles) {
            double apart = Math.abs(angle - other);
            if (Math.min(apart, 2 * Math.PI - apart) < distance) {
                return;
            }
        }
        angles.add(angle);
    }

    private static Vector2D direction(double angle) {
        return Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle));
    }

    /** The section's reach: the least of reach(u + λn), with λ = tan φ, over φ. */
    private double reachInPlane(double angle) {
        Vector3D u =
                plane.right().multiply(StrictMath.cos(angle)).add(plane.up().multiply(StrictMath.sin(angle)));
        double low = -Math.PI / 2 + 1e-6;
        double high = Math.PI / 2 - 1e-6;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = tilted(u, left);
        double atRight = tilted(u, right);
        while (high - low > 1e-14 && right > left) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = tilted(u, left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = tilted(u, right);
            }
        }
        return Math.min(Math.min(atLeft, atRight), tilted(u, 0));
    }

    private double tilted(Vector3D u, double phi) {
        double cos = Math.cos(phi);
        return reach(u.multiply(cos).add(normal.multiply(Math.sin(phi)))) / cos;
    }

    private double reach(Vector3D unit) {
        double far = Double.NEGATIVE_INFINITY;
        for (Vector3D corner : corners) {
            far = Math.max(far, corner.dot(unit));
        }
        return far + core.discReach(unit.getX(), unit.getY(), unit.getZ()) + core.roundMm();
    }
}
