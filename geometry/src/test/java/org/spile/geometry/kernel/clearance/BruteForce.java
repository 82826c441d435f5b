package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;

/**
 * The signed distance of two convex polyhedra by trying every pair of features: plain, complete, and independent of
 * the code under test. A pair of features is left out only when two balls round them are already farther apart than the
 * best found. One object per thread.
 */
final class BruteForce {
    /** Which corners make the faces and edges; shared by all moved copies of a polyhedron. */
    private static final class Topology {
        final int[][] faces;
        final int[] from;
        final int[] to;

        Topology(int[][] faces, int[] from, int[] to) {
            this.faces = faces;
            this.from = from;
            this.to = to;
        }

        static Topology of(List<List<Integer>> loops) {
            List<int[]> edges = new ArrayList<>();
            for (List<Integer> loop : loops) {
                for (int i = 0; i < loop.size(); i++) {
                    int[] edge = {loop.get(i), loop.get((i + 1) % loop.size())};
                    if (edge[0] < edge[1]) {
                        edges.add(edge);
                    }
                }
            }
            return new Topology(
                    loops.stream()
                            .map(f -> f.stream().mapToInt(Integer::intValue).toArray())
                            .toArray(int[][]::new),
                    edges.stream().mapToInt(e -> e[0]).toArray(),
                    edges.stream().mapToInt(e -> e[1]).toArray());
        }
    }

    /** A polyhedron where it stands: corners, unit face normals, and edges by middle, direction and half length. */
    private static final class Shape {
        Topology topology;
        final double[][] corner = new double[64][3];
        int corners;
        final double[][] normal = new double[64][3];
        final double[][] middle = new double[128][3];
        final double[][] along = new double[128][3];
        final double[] half = new double[128];

        void load(ConvexPolyhedron solid, Topology of) {
            topology = of;
            corners = solid.vertices().size();
            for (int i = 0; i < corners; i++) {
                Vector3D v = solid.vertices().get(i);
                set(corner[i], v.getX(), v.getY(), v.getZ());
            }
            for (int f = 0; f < of.faces.length; f++) {
                loadNormal(of.faces[f], normal[f]);
            }
            for (int e = 0; e < of.from.length; e++) {
                double[] p = corner[of.from[e]];
                double[] q = corner[of.to[e]];
                set(middle[e], (p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2);
                set(along[e], q[0] - p[0], q[1] - p[1], q[2] - p[2]);
                double length = Math.sqrt(dot(along[e], along[e]));
                set(along[e], along[e][0] / length, along[e][1] / length, along[e][2] / length);
                half[e] = length / 2;
            }
        }

        private void loadNormal(int[] loop, double[] into) {
            double[] o = corner[loop[0]];
            double x = 0;
            double y = 0;
            double z = 0;
            for (int i = 1; i + 1 < loop.length; i++) {
                double[] p = corner[loop[i]];
                double[] q = corner[loop[i + 1]];
                x += (p[1] - o[1]) * (q[2] - o[2]) - (p[2] - o[2]) * (q[1] - o[1]);
                y += (p[2] - o[2]) * (q[0] - o[0]) - (p[0] - o[0]) * (q[2] - o[2]);
                z += (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);
            }
            double length = Math.sqrt(x * x + y * y + z * z);
            set(into, x / length, y / length, z / length);
        }
    }

    private final IdentityHashMap<List<List<Integer>>, Topology> known = new IdentityHashMap<>();
    private final Shape a = new Shape();
    private final Shape b = new Shape();
    private double best;
    private final double[] onA = new double[3];
    private final double[] onB = new double[3];

    /** Distance if apart, minus the depth if not. */
    double signedDistance(ConvexPolyhedron first, ConvexPolyhedron second) {
        load(first, second);
        double depth = depth();
        if (depth > 0) {
            return -depth;
        }
        nearestFeatures();
        return best;
    }

    /** Vector from the nearest point of A to that of B, for polyhedra that are apart. */
    Vector3D between(ConvexPolyhedron first, ConvexPolyhedron second) {
        load(first, second);
        nearestFeatures();
        return Vector3D.of(onB[0] - onA[0], onB[1] - onA[1], onB[2] - onA[2]);
    }

    private void load(ConvexPolyhedron first, ConvexPolyhedron second) {
        a.load(first, known.computeIfAbsent(first.faces(), Topology::of));
        b.load(second, known.computeIfAbsent(second.faces(), Topology::of));
    }

    // ---- apart --------------------------------------------------------------------------------------------------

    private void nearestFeatures() {
        best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < b.corners; i++) {
            cornerToFaces(b.corner[i], a, true);
        }
        for (int i = 0; i < a.corners; i++) {
            cornerToFaces(a.corner[i], b, false);
        }
        for (int e = 0; e < a.topology.from.length; e++) {
            for (int f = 0; f < b.topology.from.length; f++) {
                edgeToEdge(e, f);
            }
        }
    }

    private void cornerToFaces(double[] p, Shape solid, boolean faceOnA) {
        int[][] faces = solid.topology.faces;
        for (int f = 0; f < faces.length; f++) {
            double[] n = solid.normal[f];
            double[] base = solid.corner[faces[f][0]];
            double height = (p[0] - base[0]) * n[0] + (p[1] - base[1]) * n[1] + (p[2] - base[2]) * n[2];
            if (Math.abs(height) < best && standsOver(p, solid, faces[f], n)) {
                best = Math.abs(height);
                set(faceOnA ? onB : onA, p[0], p[1], p[2]);
                set(faceOnA ? onA : onB, p[0] - height * n[0], p[1] - height * n[1], p[2] - height * n[2]);
            }
        }
    }

    /** Whether a point projects into a face: on the inner side of the upright plane through each of its sides. */
    private static boolean standsOver(double[] p, Shape solid, int[] loop, double[] n) {
        for (int i = 0; i < loop.length; i++) {
            double[] from = solid.corner[loop[i]];
            double[] to = solid.corner[loop[(i + 1) % loop.length]];
            double sx = to[0] - from[0];
            double sy = to[1] - from[1];
            double sz = to[2] - from[2];
            double x = p[0] - from[0];
            double y = p[1] - from[1];
            double z = p[2] - from[2];
            double inward = n[0] * (sy * z - sz * y) + n[1] * (sz * x - sx * z) + n[2] * (sx * y - sy * x);
            if (inward < 0) {
                return false;
            }
        }
        return true;
    }

    /** The nearest points of two segments m + s·u and k + t·w: inside both, or at an end of one. */
    private void edgeToEdge(int e, int f) {
        double[] m = a.middle[e];
        double[] k = b.middle[f];
        double[] u = a.along[e];
        double[] w = b.along[f];
        double x = k[0] - m[0];
        double y = k[1] - m[1];
        double z = k[2] - m[2];
        double reach = best + a.half[e] + b.half[f];
        if (x * x + y * y + z * z >= reach * reach) {
            return;
        }
        double hu = a.half[e];
        double hw = b.half[f];
        double uw = dot(u, w);
        double alongU = x * u[0] + y * u[1] + z * u[2];
        double alongW = x * w[0] + y * w[1] + z * w[2];
        double det = 1 - uw * uw;
        if (det > 1e-12) {
            double s = (alongU - uw * alongW) / det;
            double t = (uw * alongU - alongW) / det;
            if (Math.abs(s) <= hu && Math.abs(t) <= hw) {
                take(m, u, s, k, w, t);
            }
        }
        take(m, u, -hu, k, w, clamp(-hu * uw - alongW, hw));
        take(m, u, hu, k, w, clamp(hu * uw - alongW, hw));
        take(m, u, clamp(alongU - hw * uw, hu), k, w, -hw);
        take(m, u, clamp(alongU + hw * uw, hu), k, w, hw);
    }

    private void take(double[] m, double[] u, double s, double[] k, double[] w, double t) {
        double x = k[0] + t * w[0] - m[0] - s * u[0];
        double y = k[1] + t * w[1] - m[1] - s * u[1];
        double z = k[2] + t * w[2] - m[2] - s * u[2];
        double distance2 = x * x + y * y + z * z;
        if (distance2 < best * best) {
            best = Math.sqrt(distance2);
            set(onA, m[0] + s * u[0], m[1] + s * u[1], m[2] + s * u[2]);
            set(onB, k[0] + t * w[0], k[1] + t * w[1], k[2] + t * w[2]);
        }
    }

    // ---- overlapping --------------------------------------------------------------------------------------------

    /** The least shift that separates over every face normal and every edge pair; not positive as soon as one does. */
    private double depth() {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < a.topology.faces.length && least > 0; f++) {
            double[] n = a.normal[f];
            least = Math.min(least, overlap(n[0], n[1], n[2]));
        }
        for (int f = 0; f < b.topology.faces.length && least > 0; f++) {
            double[] n = b.normal[f];
            least = Math.min(least, overlap(-n[0], -n[1], -n[2]));
        }
        for (int e = 0; e < a.topology.from.length; e++) {
            double[] u = a.along[e];
            for (int f = 0; f < b.topology.from.length && least > 0; f++) {
                double[] w = b.along[f];
                double x = u[1] * w[2] - u[2] * w[1];
                double y = u[2] * w[0] - u[0] * w[2];
                double z = u[0] * w[1] - u[1] * w[0];
                double length = Math.sqrt(x * x + y * y + z * z);
                if (length > 1e-10) {
                    least = Math.min(least, overlap(x / length, y / length, z / length));
                    least = Math.min(least, overlap(-x / length, -y / length, -z / length));
                }
            }
        }
        return least;
    }

    private double overlap(double x, double y, double z) {
        double far = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < a.corners; i++) {
            double[] c = a.corner[i];
            far = Math.max(far, c[0] * x + c[1] * y + c[2] * z);
        }
        double near = Double.POSITIVE_INFINITY;
        for (int i = 0; i < b.corners; i++) {
            double[] c = b.corner[i];
            near = Math.min(near, c[0] * x + c[1] * y + c[2] * z);
        }
        return far - near;
    }

    private static double clamp(double t, double most) {
        return Math.max(-most, Math.min(most, t));
    }

    private static double dot(double[] p, double[] q) {
        return p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
    }

    private static void set(double[] p, double x, double y, double z) {
        p[0] = x;
        p[1] = y;
        p[2] = z;
    }
}
