package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * Reads a mesh's points and corners: joins near points, lists the triangles' coordinates, finds useless triangles.
 *
 * <p>In the order of the corners, a point within the joining distance of one that stands already takes its place. So
 * no point moves by more than that distance, and no two that stand are nearer each other.
 */
final class MeshPoints {
    private static final int UNREAD = -1;

    /** A cube of space, its side the joining distance; for a distance of 0 the place itself, by its bits. */
    private record Cell(long x, long y, long z) {}

    private final double[] points;
    private final double weldMm;
    private final int[] numbers;
    private final int[] joined;
    private final double[] triangles;
    private final boolean[] placed;
    private final boolean[] sound;
    private final List<Vector3D> standing = new ArrayList<>();
    private final Map<Cell, List<Integer>> cells = new HashMap<>();
    private final List<MeshFlaw> flaws = new ArrayList<>();

    MeshPoints(double[] points, int[] corners, double weldMm) {
        this.points = points;
        this.weldMm = weldMm;
        this.numbers = new int[points.length / 3];
        Arrays.fill(numbers, UNREAD);
        this.joined = new int[corners.length];
        this.triangles = new double[3 * corners.length];
        this.placed = new boolean[corners.length / 3];
        this.sound = new boolean[corners.length / 3];
        if (corners.length == 0) {
            flaws.add(new MeshFlaw(MeshFlaw.Kind.EMPTY, List.of(), Vector3D.ZERO));
        }
        for (int t = 0; t < placed.length; t++) {
            int before = flaws.size();
            for (int k = 3 * t; k < 3 * t + 3; k++) {
                take(t, k, corners[k]);
            }
            placed[t] = flaws.size() == before;
            sound[t] = placed[t] && hasArea(t);
        }
    }

    /** Every reason why a triangle is useless. */
    List<MeshFlaw> flaws() {
        return flaws;
    }

    /** The number of each corner's point; near points have one number. */
    int[] joined() {
        return joined;
    }

    /** Nine coordinates a triangle. */
    double[] triangles() {
        return triangles;
    }

    /** The triangles whose corners all have a place, in order. */
    int[] placed() {
        return named(placed);
    }

    /** The triangles that can be measured, in order. */
    int[] sound() {
        return named(sound);
    }

    private static int[] named(boolean[] which) {
        int[] names = new int[which.length];
        int count = 0;
        for (int t = 0; t < which.length; t++) {
            if (which[t]) {
                names[count++] = t;
            }
        }
        return Arrays.copyOf(names, count);
    }

    private void take(int t, int k, int point) {
        if (point < 0 || point >= numbers.length) {
            flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_SUCH_POINT, List.of(t), Vector3D.NaN));
            return;
        }
        if (numbers[point] == UNREAD) {
            // Adding zero makes negative zero positive.
            Vector3D at =
                    Vector3D.of(points[3 * point] + 0.0, points[3 * point + 1] + 0.0, points[3 * point + 2] + 0.0);
            if (!isPlace(at)) {
                flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_PLACE, List.of(t), at));
                return;
            }
            numbers[point] = number(at);
        }
        joined[k] = numbers[point];
        Vector3D at = standing.get(joined[k]);
        triangles[3 * k] = at.getX();
        triangles[3 * k + 1] = at.getY();
        triangles[3 * k + 2] = at.getZ();
    }

    private static boolean isPlace(Vector3D at) {
        return Math.abs(at.getX()) <= GeometryTolerance.LARGEST_MM
                && Math.abs(at.getY()) <= GeometryTolerance.LARGEST_MM
                && Math.abs(at.getZ()) <= GeometryTolerance.LARGEST_MM;
    }

    private int number(Vector3D at) {
        int near = weldMm == 0 ? equal(at) : near(at);
        if (near != UNREAD) {
            return near;
        }
        cells.computeIfAbsent(cell(at, 0, 0, 0), cell -> new ArrayList<>(1)).add(standing.size());
        standing.add(at);
        return standing.size() - 1;
    }

    private int equal(Vector3D at) {
        return cells.getOrDefault(cell(at, 0, 0, 0), List.of(UNREAD)).get(0);
    }

    /** The first point to stand within the joining distance. */
    private int near(Vector3D at) {
        int first = Integer.MAX_VALUE;
        for (int i = 0; i < 27; i++) {
            for (int other : cells.getOrDefault(cell(at, i / 9 - 1, i / 3 % 3 - 1, i % 3 - 1), List.of())) {
                if (other < first && at.distance(standing.get(other)) <= weldMm) {
                    first = other;
                }
            }
        }
        return first == Integer.MAX_VALUE ? UNREAD : first;
    }

    private Cell cell(Vector3D at, int dx, int dy, int dz) {
        if (weldMm == 0) {
            return new Cell(
                    Double.doubleToLongBits(at.getX()),
                    Double.doubleToLongBits(at.getY()),
                    Double.doubleToLongBits(at.getZ()));
        }
        return new Cell(
                (long) Math.floor(at.getX() / weldMm) + dx,
                (long) Math.floor(at.getY() / weldMm) + dy,
                (long) Math.floor(at.getZ() / weldMm) + dz);
    }

    private boolean hasArea(int t) {
        Vector3D a = standing.get(joined[3 * t]);
        Vector3D b = standing.get(joined[3 * t + 1]);
        Vector3D c = standing.get(joined[3 * t + 2]);
        double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
        double twiceArea = b.subtract(a).cross(c.subtract(a)).norm();
        boolean hasArea = twiceArea > GeometryTolerance.CONTACT_MM * longest;
        if (!hasArea) {
            Vector3D middle = a.add(b).add(c).multiply(1.0 / 3);
            flaws.add(new MeshFlaw(MeshFlaw.Kind.NO_AREA, List.of(t), middle));
        }
        return hasArea;
    }
}
