package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * The convex hull of points in space, one point after the other (the incremental hull of de Berg and others,
 * Computational Geometry, 3rd ed., chapter 11, without its conflict lists).
 *
 * <p>Which triangles a point sees is decided without rounding ({@link Orientation}), so the triangles always close.
 * Only then are those within the contact tolerance of one plane joined ({@link CoplanarFaces}).
 */
final class ConvexHull {
    private final List<Vector3D> points;
    private List<int[]> triangles = new ArrayList<>();

    private ConvexHull(List<Vector3D> points) {
        this.points = points;
    }

    static CoplanarFaces of(Collection<Vector3D> given) {
        List<Vector3D> points = distinct(given);
        int[] start = start(points);
        ConvexHull hull = new ConvexHull(points);
        hull.startWith(start);
        for (int i = 0; i < points.size(); i++) {
            hull.add(i);
        }
        return CoplanarFaces.joined(points, hull.triangles);
    }

    private static List<Vector3D> distinct(Collection<Vector3D> given) {
        List<Vector3D> kept = new ArrayList<>();
        for (Vector3D point : given) {
            GeometryTolerance.inRange("x", point.getX());
            GeometryTolerance.inRange("y", point.getY());
            GeometryTolerance.inRange("z", point.getZ());
            if (kept.stream().noneMatch(k -> k.distance(point) < GeometryTolerance.CONTACT_MM)) {
                kept.add(point);
            }
        }
        return kept;
    }

    /** Four points that span space: a far pair, then the farthest from its line, then from that plane. */
    private static int[] start(List<Vector3D> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a hull needs points and got none");
        }
        Vector3D origin = points.get(0);
        int b = farthest(points, p -> p.distance(origin));
        Vector3D line = points.get(b).subtract(origin);
        double length = line.norm();
        int c = farthest(
                points, p -> length > 0 ? p.subtract(origin).cross(line).norm() / length : 0);
        Vector3D normal = line.cross(points.get(c).subtract(origin));
        double size = normal.norm();
        int d = farthest(points, p -> size > 0 ? Math.abs(p.subtract(origin).dot(normal)) / size : 0);
        double thickness = size > 0 ? Math.abs(points.get(d).subtract(origin).dot(normal)) / size : 0;
        if (!(thickness > GeometryTolerance.CONTACT_MM)) {
            throw new IllegalArgumentException(points.size() + " different points near " + origin
                    + " mm lie in one plane or line; a polyhedron needs a thickness");
        }
        return new int[] {0, b, c, d};
    }

    private static int farthest(List<Vector3D> points, java.util.function.ToDoubleFunction<Vector3D> measure) {
        int best = 0;
        double most = measure.applyAsDouble(points.get(0));
        for (int i = 1; i < points.size(); i++) {
            double value = measure.applyAsDouble(points.get(i));
            if (value > most) {
                most = value;
                best = i;
            }
        }
        return best;
    }

    private void startWith(int[] s) {
        boolean seen = sees(s[3], new int[] {s[0], s[1], s[2]});
        int b = seen ? s[2] : s[1];
        int c = seen ? s[1] : s[2];
        triangles.add(new int[] {s[0], b, c});
        triangles.add(new int[] {s[0], c, s[3]});
        triangles.add(new int[] {c, b, s[3]});
        triangles.add(new int[] {b, s[0], s[3]});
    }

    /** Takes away the triangles a point sees and closes the rim with triangles to it. */
    private void add(int point) {
        List<int[]> kept = new ArrayList<>();
        List<int[]> seen = new ArrayList<>();
        for (int[] triangle : triangles) {
            (sees(point, triangle) ? seen : kept).add(triangle);
        }
        if (seen.isEmpty()) {
            return;
        }
        Set<List<Integer>> sides = new LinkedHashSet<>();
        for (int[] t : seen) {
            for (int k = 0; k < 3; k++) {
                sides.add(List.of(t[k], t[(k + 1) % 3]));
            }
        }
        for (List<Integer> side : sides) {
            if (!sides.contains(List.of(side.get(1), side.get(0)))) {
                kept.add(new int[] {side.get(0), side.get(1), point});
            }
        }
        triangles = kept;
    }

    private boolean sees(int point, int[] triangle) {
        return Orientation.of(
                        points.get(triangle[0]), points.get(triangle[1]), points.get(triangle[2]), points.get(point))
                > 0;
    }
}
