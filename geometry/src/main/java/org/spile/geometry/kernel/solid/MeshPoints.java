package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/** Reads a mesh's points and corners: joins equal points, lists the triangles' coordinates, finds useless ones. */
final class MeshPoints {
    private final double[] points;
    private final int[] joined;
    private final double[] triangles;
    private final List<MeshFlaw> flaws = new ArrayList<>();

    MeshPoints(double[] points, int[] corners) {
        this.points = points;
        this.joined = new int[corners.length];
        this.triangles = new double[3 * corners.length];
        if (corners.length == 0) {
            flaws.add(new MeshFlaw(MeshFlaw.Kind.EMPTY, List.of(), Vector3D.ZERO));
        }
        Map<Vector3D, Integer> known = new HashMap<>();
        for (int t = 0; t < corners.length / 3; t++) {
            int before = flaws.size();
            for (int k = 3 * t; k < 3 * t + 3; k++) {
                take(t, k, corners[k], known);
            }
            if (flaws.size() == before) {
                checkArea(t);
            }
        }
    }

    List<MeshFlaw> flaws() {
        return flaws;
    }

    int[] joined() {
        return joined;
    }

    double[] triangles() {
        return triangles;
    }

    private void take(int t, int k, int point, Map<Vector3D, Integer> known) {
        if (point < 0 || point >= points.length / 3) {
            flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_SUCH_POINT, List.of(t), Vector3D.NaN));
            return;
        }
        // Adding zero makes negative zero positive, so that equal places are equal points.
        Vector3D at = Vector3D.of(points[3 * point] + 0.0, points[3 * point + 1] + 0.0, points[3 * point + 2] + 0.0);
        if (!isPlace(at)) {
            flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_PLACE, List.of(t), at));
            return;
        }
        triangles[3 * k] = at.getX();
        triangles[3 * k + 1] = at.getY();
        triangles[3 * k + 2] = at.getZ();
        int next = known.size();
        joined[k] = known.computeIfAbsent(at, p -> next);
    }

    private static boolean isPlace(Vector3D at) {
        double largest = Math.max(Math.abs(at.getX()), Math.max(Math.abs(at.getY()), Math.abs(at.getZ())));
        return largest <= GeometryTolerance.LARGEST_MM;
    }

    private void checkArea(int t) {
        Vector3D a = corner(t, 0);
        Vector3D b = corner(t, 1);
        Vector3D c = corner(t, 2);
        double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
        double twiceArea = b.subtract(a).cross(c.subtract(a)).norm();
        if (!(twiceArea > GeometryTolerance.CONTACT_MM * longest)) {
            Vector3D middle = a.add(b).add(c).multiply(1.0 / 3);
            flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_AREA, List.of(t), middle));
        }
    }

    private Vector3D corner(int t, int k) {
        int at = 9 * t + 3 * k;
        return Vector3D.of(triangles[at], triangles[at + 1], triangles[at + 2]);
    }
}
