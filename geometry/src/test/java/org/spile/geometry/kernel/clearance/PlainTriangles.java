package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Mesh;

/** Distances of lists of triangles by trying all corners, edges and faces of every pair: plain and independent. */
final class PlainTriangles {
    private PlainTriangles() {}

    static List<Vector3D[]> of(Mesh mesh) {
        List<Vector3D[]> triangles = new ArrayList<>();
        for (int t = 0; t < mesh.count(); t++) {
            triangles.add(new Vector3D[] {mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)});
        }
        return triangles;
    }

    static List<Vector3D[]> of(ConvexPolyhedron solid) {
        List<Vector3D[]> triangles = new ArrayList<>();
        List<Vector3D> v = solid.vertices();
        for (List<Integer> face : solid.faces()) {
            for (int i = 1; i + 1 < face.size(); i++) {
                triangles.add(new Vector3D[] {v.get(face.get(0)), v.get(face.get(i)), v.get(face.get(i + 1))});
            }
        }
        return triangles;
    }

    /** The least distance of two triangles out of two lists; 0 if any two cross. */
    static double distance(List<Vector3D[]> first, List<Vector3D[]> second) {
        double best = Double.POSITIVE_INFINITY;
        for (Vector3D[] p : first) {
            for (Vector3D[] q : second) {
                best = Math.min(best, distance(p, q));
            }
        }
        return best;
    }

    static double distance(Vector3D[] p, Vector3D[] q) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            if (crosses(p[i], p[(i + 1) % 3], q) || crosses(q[i], q[(i + 1) % 3], p)) {
                return 0;
            }
            best = Math.min(best, Math.min(over(p[i], q), over(q[i], p)));
            for (int j = 0; j < 3; j++) {
                best = Math.min(best, segments(p[i], p[(i + 1) % 3], q[j], q[(j + 1) % 3]));
            }
        }
        return best;
    }

    /** Height of a point over a triangle's plane if its foot lies in the triangle, else infinite. */
    private static double over(Vector3D point, Vector3D[] t) {
        Vector3D n = normal(t);
        double height = point.subtract(t[0]).dot(n);
        return holds(t, n, point.subtract(n.multiply(height))) ? Math.abs(height) : Double.POSITIVE_INFINITY;
    }

    private static boolean crosses(Vector3D from, Vector3D to, Vector3D[] t) {
        Vector3D n = normal(t);
        double h = from.subtract(t[0]).dot(n);
        double k = to.subtract(t[0]).dot(n);
        return h * k < 0 && holds(t, n, from.add(to.subtract(from).multiply(h / (h - k))));
    }

    private static boolean holds(Vector3D[] t, Vector3D n, Vector3D point) {
        for (int i = 0; i < 3; i++) {
            Vector3D side = t[(i + 1) % 3].subtract(t[i]);
            if (n.dot(side.cross(point.subtract(t[i]))) < 0) {
                return false;
            }
        }
        return true;
    }

    private static Vector3D normal(Vector3D[] t) {
        return t[1].subtract(t[0]).cross(t[2].subtract(t[0])).normalize();
    }

    private static double segments(Vector3D p, Vector3D q, Vector3D r, Vector3D s) {
        Vector3D u = q.subtract(p);
        Vector3D w = s.subtract(r);
        double uw = u.dot(w);
        double det = u.dot(u) * w.dot(w) - uw * uw;
        double best = Math.min(Math.min(end(p, r, w), end(q, r, w)), Math.min(end(r, p, u), end(s, p, u)));
        if (det > 1e-12 * u.dot(u) * w.dot(w)) {
            Vector3D x = r.subtract(p);
            double a = (x.dot(u) * w.dot(w) - x.dot(w) * uw) / det;
            double b = (x.dot(u) * uw - x.dot(w) * u.dot(u)) / det;
            if (a >= 0 && a <= 1 && b >= 0 && b <= 1) {
                best = Math.min(best, p.add(u.multiply(a)).distance(r.add(w.multiply(b))));
            }
        }
        return best;
    }

    private static double end(Vector3D point, Vector3D from, Vector3D along) {
        double t = Math.max(0, Math.min(1, point.subtract(from).dot(along) / along.dot(along)));
        return point.distance(from.add(along.multiply(t)));
    }

    /** Whether a point lies within a convex polyhedron. */
    static boolean holds(ConvexPolyhedron solid, Vector3D point) {
        for (int f = 0; f < solid.faces().size(); f++) {
            Vector3D base = solid.vertices().get(solid.faces().get(f).get(0));
            if (point.subtract(base).dot(solid.normal(f)) > 0) {
                return false;
            }
        }
        return true;
    }
}
