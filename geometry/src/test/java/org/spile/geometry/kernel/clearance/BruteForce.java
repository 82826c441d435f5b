package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;

/**
 * The signed distance of two convex polyhedra by trying every pair of features: slow, plain, and independent of the
 * code under test.
 */
final class BruteForce {
    private final ConvexPolyhedron a;
    private final ConvexPolyhedron b;
    private double best = Double.POSITIVE_INFINITY;
    private Vector3D onA = Vector3D.ZERO;
    private Vector3D onB = Vector3D.ZERO;

    private BruteForce(ConvexPolyhedron a, ConvexPolyhedron b) {
        this.a = a;
        this.b = b;
    }

    /** Distance if apart, minus the depth if not. */
    static double signedDistance(ConvexPolyhedron a, ConvexPolyhedron b) {
        double depth = depth(a, b);
        return depth > 0 ? -depth : features(a, b).best;
    }

    /** Vector from the nearest point of A to that of B, for polyhedra that are apart. */
    static Vector3D between(ConvexPolyhedron a, ConvexPolyhedron b) {
        BruteForce brute = features(a, b);
        return brute.onB.subtract(brute.onA);
    }

    private static BruteForce features(ConvexPolyhedron a, ConvexPolyhedron b) {
        BruteForce brute = new BruteForce(a, b);
        for (Vector3D corner : b.vertices()) {
            for (List<Integer> face : a.faces()) {
                brute.cornerToFace(corner, a, face, true);
            }
        }
        for (Vector3D corner : a.vertices()) {
            for (List<Integer> face : b.faces()) {
                brute.cornerToFace(corner, b, face, false);
            }
        }
        for (List<Integer> f : a.faces()) {
            for (int i = 0; i < f.size(); i++) {
                brute.edgeToEdges(a.vertices().get(f.get(i)), a.vertices().get(f.get((i + 1) % f.size())));
            }
        }
        return brute;
    }

    private void cornerToFace(Vector3D p, ConvexPolyhedron solid, List<Integer> face, boolean faceOnA) {
        List<Vector3D> v = solid.vertices();
        Vector3D base = v.get(face.get(0));
        Vector3D normal = v.get(face.get(1))
                .subtract(base)
                .cross(v.get(face.get(2)).subtract(base))
                .normalize();
        double height = p.subtract(base).dot(normal);
        Vector3D foot = p.subtract(normal.multiply(height));
        for (int i = 0; i < face.size(); i++) {
            Vector3D from = v.get(face.get(i));
            Vector3D side = v.get(face.get((i + 1) % face.size())).subtract(from);
            if (side.cross(foot.subtract(from)).dot(normal) < 0) {
                return;
            }
        }
        take(faceOnA ? foot : p, faceOnA ? p : foot);
    }

    private void edgeToEdges(Vector3D p, Vector3D q) {
        for (List<Integer> g : b.faces()) {
            for (int i = 0; i < g.size(); i++) {
                Vector3D r = b.vertices().get(g.get(i));
                Vector3D s = b.vertices().get(g.get((i + 1) % g.size()));
                edgeToEdge(p, q.subtract(p), r, s.subtract(r));
            }
        }
    }

    /** The nearest points of two segments: inside both, or at an end of one. */
    private void edgeToEdge(Vector3D p, Vector3D u, Vector3D r, Vector3D w) {
        double uu = u.dot(u);
        double uw = u.dot(w);
        double ww = w.dot(w);
        Vector3D between = p.subtract(r);
        double det = uu * ww - uw * uw;
        if (det > 1e-12 * uu * ww) {
            double s = (uw * w.dot(between) - ww * u.dot(between)) / det;
            double t = (uu * w.dot(between) - uw * u.dot(between)) / det;
            if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
                take(p.add(u.multiply(s)), r.add(w.multiply(t)));
            }
        }
        for (int end = 0; end < 2; end++) {
            Vector3D onFirst = p.add(u.multiply(end));
            take(onFirst, r.add(w.multiply(clamp(onFirst.subtract(r).dot(w) / ww))));
            Vector3D onSecond = r.add(w.multiply(end));
            take(p.add(u.multiply(clamp(onSecond.subtract(p).dot(u) / uu))), onSecond);
        }
    }

    private static double clamp(double t) {
        return Math.max(0, Math.min(1, t));
    }

    private void take(Vector3D first, Vector3D second) {
        double distance = first.distance(second);
        if (distance < best) {
            best = distance;
            onA = first;
            onB = second;
        }
    }

    /** The least shift that separates, over every face normal and every edge pair, one by one; not positive if apart. */
    static double depth(ConvexPolyhedron a, ConvexPolyhedron b) {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < a.faces().size(); f++) {
            least = Math.min(least, overlap(a, b, a.normal(f)));
        }
        for (int f = 0; f < b.faces().size(); f++) {
            least = Math.min(least, overlap(a, b, b.normal(f).negate()));
        }
        for (List<Integer> f : a.faces()) {
            for (int i = 0; i < f.size(); i++) {
                Vector3D u = a.vertices()
                        .get(f.get((i + 1) % f.size()))
                        .subtract(a.vertices().get(f.get(i)));
                for (List<Integer> g : b.faces()) {
                    for (int k = 0; k < g.size(); k++) {
                        Vector3D w = b.vertices()
                                .get(g.get((k + 1) % g.size()))
                                .subtract(b.vertices().get(g.get(k)));
                        Vector3D cross = u.normalize().cross(w.normalize());
                        if (cross.norm() > 1e-10) {
                            least = Math.min(least, overlap(a, b, cross.normalize()));
                        }
                    }
                }
            }
        }
        return least;
    }

    private static double overlap(ConvexPolyhedron a, ConvexPolyhedron b, Vector3D direction) {
        double far = Double.NEGATIVE_INFINITY;
        double near = Double.POSITIVE_INFINITY;
        for (Vector3D corner : a.vertices()) {
            far = Math.max(far, corner.dot(direction));
        }
        for (Vector3D corner : b.vertices()) {
            near = Math.min(near, corner.dot(direction));
        }
        return far - near;
    }
}
