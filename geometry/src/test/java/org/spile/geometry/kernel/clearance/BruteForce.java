package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;

/**
 * The signed distance of two convex polyhedra by trying every pair of features: plain, complete, and independent of
 * the code under test.
 */
final class BruteForce {
    /** A polyhedron as plain numbers: corners, face loops, edges and face normals. */
    private static final class Shape {
        final double[][] corners;
        final int[][] faces;
        final int[][] edges;
        final double[][] normals;

        Shape(ConvexPolyhedron solid) {
            corners = solid.vertices().stream()
                    .map(v -> new double[] {v.getX(), v.getY(), v.getZ()})
                    .toArray(double[][]::new);
            faces = solid.faces().stream()
                    .map(f -> f.stream().mapToInt(Integer::intValue).toArray())
                    .toArray(int[][]::new);
            normals = new double[faces.length][];
            List<int[]> found = new ArrayList<>();
            for (int f = 0; f < faces.length; f++) {
                double[] base = corners[faces[f][0]];
                double[] sum = new double[3];
                for (int i = 0; i < faces[f].length; i++) {
                    int from = faces[f][i];
                    int to = faces[f][(i + 1) % faces[f].length];
                    if (from < to) {
                        found.add(new int[] {from, to});
                    }
                    sum = along(sum, cross(minus(corners[from], base), minus(corners[to], base)), 1);
                }
                normals[f] = unit(sum);
            }
            edges = found.toArray(int[][]::new);
        }
    }

    private double best = Double.POSITIVE_INFINITY;
    private double[] onA;
    private double[] onB;

    private BruteForce() {}

    /** Distance if apart, minus the depth if not. */
    static double signedDistance(ConvexPolyhedron first, ConvexPolyhedron second) {
        Shape a = new Shape(first);
        Shape b = new Shape(second);
        double depth = depth(a, b);
        return depth > 0 ? -depth : features(a, b).best;
    }

    /** Vector from the nearest point of A to that of B, for polyhedra that are apart. */
    static Vector3D between(ConvexPolyhedron a, ConvexPolyhedron b) {
        BruteForce brute = features(new Shape(a), new Shape(b));
        return Vector3D.of(minus(brute.onB, brute.onA));
    }

    private static BruteForce features(Shape a, Shape b) {
        BruteForce brute = new BruteForce();
        for (double[] corner : b.corners) {
            brute.cornerToFaces(corner, a, true);
        }
        for (double[] corner : a.corners) {
            brute.cornerToFaces(corner, b, false);
        }
        for (int[] e : a.edges) {
            for (int[] f : b.edges) {
                brute.edgeToEdge(a.corners[e[0]], a.corners[e[1]], b.corners[f[0]], b.corners[f[1]]);
            }
        }
        return brute;
    }

    private void cornerToFaces(double[] p, Shape solid, boolean faceOnA) {
        for (int f = 0; f < solid.faces.length; f++) {
            double[] normal = solid.normals[f];
            int[] loop = solid.faces[f];
            double height = dot(minus(p, solid.corners[loop[0]]), normal);
            double[] foot = along(p, normal, -height);
            boolean within = true;
            for (int i = 0; within && i < loop.length; i++) {
                double[] from = solid.corners[loop[i]];
                double[] side = minus(solid.corners[loop[(i + 1) % loop.length]], from);
                within = dot(cross(side, minus(foot, from)), normal) >= 0;
            }
            if (within) {
                take(faceOnA ? foot : p, faceOnA ? p : foot);
            }
        }
    }

    /** The nearest points of two segments: inside both, or at an end of one. */
    private void edgeToEdge(double[] p, double[] q, double[] r, double[] s) {
        double[] u = minus(q, p);
        double[] w = minus(s, r);
        double uu = dot(u, u);
        double uw = dot(u, w);
        double ww = dot(w, w);
        double[] between = minus(p, r);
        double det = uu * ww - uw * uw;
        if (det > 1e-12 * uu * ww) {
            double atP = (uw * dot(w, between) - ww * dot(u, between)) / det;
            double atR = (uu * dot(w, between) - uw * dot(u, between)) / det;
            if (atP >= 0 && atP <= 1 && atR >= 0 && atR <= 1) {
                take(along(p, u, atP), along(r, w, atR));
            }
        }
        take(p, along(r, w, clamp(dot(minus(p, r), w) / ww)));
        take(q, along(r, w, clamp(dot(minus(q, r), w) / ww)));
        take(along(p, u, clamp(dot(minus(r, p), u) / uu)), r);
        take(along(p, u, clamp(dot(minus(s, p), u) / uu)), s);
    }

    private void take(double[] first, double[] second) {
        double[] between = minus(second, first);
        double distance = Math.sqrt(dot(between, between));
        if (distance < best) {
            best = distance;
            onA = first;
            onB = second;
        }
    }

    /** The least shift that separates, over every face normal and every edge pair, one by one; not positive if apart. */
    private static double depth(Shape a, Shape b) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] normal : a.normals) {
            least = Math.min(least, overlap(a, b, normal));
        }
        for (double[] normal : b.normals) {
            least = Math.min(least, overlap(a, b, times(normal, -1)));
        }
        for (int[] e : a.edges) {
            double[] u = unit(minus(a.corners[e[1]], a.corners[e[0]]));
            for (int[] f : b.edges) {
                double[] cross = cross(u, unit(minus(b.corners[f[1]], b.corners[f[0]])));
                if (dot(cross, cross) > 1e-20) {
                    least = Math.min(least, overlap(a, b, unit(cross)));
                    least = Math.min(least, overlap(a, b, times(unit(cross), -1)));
                }
            }
        }
        return least;
    }

    private static double overlap(Shape a, Shape b, double[] direction) {
        double far = Double.NEGATIVE_INFINITY;
        double near = Double.POSITIVE_INFINITY;
        for (double[] corner : a.corners) {
            far = Math.max(far, dot(corner, direction));
        }
        for (double[] corner : b.corners) {
            near = Math.min(near, dot(corner, direction));
        }
        return far - near;
    }

    private static double clamp(double t) {
        return Math.max(0, Math.min(1, t));
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] times(double[] a, double s) {
        return new double[] {a[0] * s, a[1] * s, a[2] * s};
    }

    private static double[] along(double[] a, double[] u, double s) {
        return new double[] {a[0] + s * u[0], a[1] + s * u[1], a[2] + s * u[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        return times(a, 1 / Math.sqrt(dot(a, a)));
    }
}
