package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Meshes whose measures are known by closed forms. */
public final class SampleMeshes {
    /** Twelve triangles of a box on the corners of {@link #boxPoints}. */
    private static final int[] BOX = {
        0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7
    };

    private SampleMeshes() {}

    /** The mesh; fails if it is refused. */
    public static Mesh sound(double[] points, int... corners) {
        MeshResult result = Mesh.of(points, corners);
        if (result instanceof MeshResult.Sound sound) {
            return sound.mesh();
        }
        throw new AssertionError(result.toString());
    }

    /** The corners of a box: the bottom ring counter-clockwise from above, then the top ring. */
    public static double[] boxPoints(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new double[] {
            x0, y0, z0, x1, y0, z0, x1, y1, z0, x0, y1, z0, x0, y0, z1, x1, y0, z1, x1, y1, z1, x0, y1, z1
        };
    }

    /** The triangles of a box. */
    public static int[] boxCorners() {
        return BOX.clone();
    }

    /** A box. */
    public static Mesh box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return sound(boxPoints(x0, y0, z0, x1, y1, z1), BOX);
    }

    /** Triangles with each corner the other way round. */
    public static int[] turned(int... corners) {
        int[] turned = corners.clone();
        for (int t = 0; t < turned.length; t += 3) {
            turned[t] = corners[t + 1];
            turned[t + 1] = corners[t];
        }
        return turned;
    }

    /** Two lists of triangles as one, the second one's points after those of the first. */
    public static int[] joined(int firstPoints, int[] first, int... second) {
        int[] all = Arrays.copyOf(first, first.length + second.length);
        for (int i = 0; i < second.length; i++) {
            all[first.length + i] = second[i] + firstPoints;
        }
        return all;
    }

    /** Two lists of coordinates as one. */
    public static double[] joined(double[] first, double... second) {
        double[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    /** An upright prism on an outline, counter-clockwise, whose plan is cut into the given triangles. */
    public static Mesh prism(double[] plan, int[] cut, double bottom, double top) {
        int n = plan.length / 2;
        double[] points = new double[6 * n];
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            put(points, i, plan[2 * i], plan[2 * i + 1], bottom);
            put(points, n + i, plan[2 * i], plan[2 * i + 1], top);
            corners.addAll(List.of(i, next, n + next, i, n + next, n + i));
        }
        for (int k = 0; k < cut.length; k += 3) {
            corners.addAll(List.of(cut[k], cut[k + 2], cut[k + 1], n + cut[k], n + cut[k + 1], n + cut[k + 2]));
        }
        return sound(points, corners.stream().mapToInt(Integer::intValue).toArray());
    }

    private static void put(double[] points, int i, double x, double y, double z) {
        points[3 * i] = x;
        points[3 * i + 1] = y;
        points[3 * i + 2] = z;
    }

    /** An L of legs 300 and 200 long, 90 and 80 wide, 120 high. */
    public static Mesh ell() {
        return ell(0, 0, 300, 200, 90, 80, 120);
    }

    /** An L from a corner to the ends of its legs, the legs' inner sides at x and y, from the ground up. */
    public static Mesh ell(double fromX, double fromY, double toX, double toY, double x, double y, double top) {
        double[] plan = {x, y, x, toY, fromX, toY, fromX, fromY, toX, fromY, toX, y};
        return prism(plan, new int[] {0, 1, 2, 0, 2, 3, 0, 3, 4, 0, 4, 5}, 0, top);
    }

    /** A channel 200 wide and 100 high with a slot from x = 40 to 160 down to y = 20, 50 long. */
    public static Mesh channel() {
        double[] plan = {0, 0, 200, 0, 200, 100, 160, 100, 160, 20, 40, 20, 40, 100, 0, 100};
        return prism(plan, new int[] {0, 1, 4, 0, 4, 5, 1, 2, 3, 1, 3, 4, 0, 5, 6, 0, 6, 7}, 0, 50);
    }

    /** A sphere of triangles about the origin: a regular icosahedron whose faces are cut in four, level by level. */
    public static Mesh icosphere(double radius, int levels) {
        double g = (1 + Math.sqrt(5)) / 2;
        List<Vector3D> points = new ArrayList<>();
        for (double[] p : new double[][] {
            {-1, g, 0}, {1, g, 0}, {-1, -g, 0}, {1, -g, 0}, {0, -1, g}, {0, 1, g},
            {0, -1, -g}, {0, 1, -g}, {g, 0, -1}, {g, 0, 1}, {-g, 0, -1}, {-g, 0, 1}
        }) {
            points.add(Vector3D.of(p).withNorm(radius));
        }
        List<int[]> faces = new ArrayList<>(List.of(
                new int[] {0, 11, 5},
                new int[] {0, 5, 1},
                new int[] {0, 1, 7},
                new int[] {0, 7, 10},
                new int[] {0, 10, 11},
                new int[] {1, 5, 9},
                new int[] {5, 11, 4},
                new int[] {11, 10, 2},
                new int[] {10, 7, 6},
                new int[] {7, 1, 8},
                new int[] {3, 9, 4},
                new int[] {3, 4, 2},
                new int[] {3, 2, 6},
                new int[] {3, 6, 8},
                new int[] {3, 8, 9},
                new int[] {4, 9, 5},
                new int[] {2, 4, 11},
                new int[] {6, 2, 10},
                new int[] {8, 6, 7},
                new int[] {9, 8, 1}));
        for (int level = 0; level < levels; level++) {
            faces = cut(faces, points, radius);
        }
        return sound(
                points.stream().flatMapToDouble(p -> Arrays.stream(p.toArray())).toArray(),
                faces.stream().flatMapToInt(Arrays::stream).toArray());
    }

    private static List<int[]> cut(List<int[]> faces, List<Vector3D> points, double radius) {
        Map<Long, Integer> middles = new HashMap<>();
        List<int[]> finer = new ArrayList<>();
        for (int[] f : faces) {
            int[] m = new int[3];
            for (int k = 0; k < 3; k++) {
                int a = f[k];
                int b = f[(k + 1) % 3];
                m[k] = middles.computeIfAbsent((long) Math.min(a, b) << 32 | Math.max(a, b), key -> {
                    points.add(points.get(a).add(points.get(b)).withNorm(radius));
                    return points.size() - 1;
                });
            }
            finer.addAll(List.of(
                    new int[] {f[0], m[0], m[2]}, new int[] {f[1], m[1], m[0]}, new int[] {f[2], m[2], m[1]}, m));
        }
        return finer;
    }
}
