package org.spile.geometry.kernel.solid;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Whether two triangles meet in more than a point: along a line, or in an area if they lie in one plane.
 *
 * <p>The intervals that both cut from the common line of their planes are compared (Möller, J. Graphics Tools 2, 1997).
 * Corners within a tenth of the contact tolerance of a plane lie in it; what meets along no more than the contact
 * tolerance meets in a point. One object for many pairs; coordinates about the first triangle's first corner.
 */
final class TriangleMeeting {
    private static final double IN_PLANE_MM = 1e-7;
    private static final double LONG_MM = 1e-6;

    private final double[] p = new double[9];
    private final double[] q = new double[9];
    private final double[] normalP = new double[3];
    private final double[] normalQ = new double[3];
    private final double[] overP = new double[3];
    private final double[] overQ = new double[3];
    private final double[] line = new double[3];
    private final double[] side = new double[3];
    private final double[] lowAt = new double[3];
    private final double[] highAt = new double[3];
    private Vector3D base = Vector3D.ZERO;
    private Vector3D at = Vector3D.ZERO;
    private double low;
    private double high;

    boolean meet(double[] triangles, int first, int second) {
        load(triangles, first, second);
        if (flat(overQ) && flat(overP)) {
            return overlapInPlane();
        }
        if (oneSided(overQ) || oneSided(overP)) {
            return false;
        }
        cross(normalP, normalQ, line);
        return unit(line) && meetOnLine();
    }

    /** Whether two triangles with a common edge lie on each other. */
    boolean fold(double[] triangles, int first, int second) {
        load(triangles, first, second);
        return flat(overQ) && flat(overP) && overlapInPlane();
    }

    /** The middle of what the two triangles share, after they have been found to meet. */
    Vector3D at() {
        return base.add(at);
    }

    private void load(double[] triangles, int first, int second) {
        int from = 9 * first;
        base = Vector3D.of(triangles[from], triangles[from + 1], triangles[from + 2]);
        for (int k = 0; k < 9; k++) {
            p[k] = triangles[from + k] - triangles[from + k % 3];
            q[k] = triangles[9 * second + k] - triangles[from + k % 3];
        }
        normal(p, normalP);
        normal(q, normalQ);
        heights(p, q, normalQ, overQ);
        heights(q, p, normalP, overP);
    }

    // ---- along a line -------------------------------------------------------------------------------------------

    private boolean meetOnLine() {
        interval(q, overP);
        double lowQ = low;
        double highQ = high;
        interval(p, overQ);
        double from = Math.max(low, lowQ);
        double to = Math.min(high, highQ);
        if (to - from <= LONG_MM) {
            return false;
        }
        double part = ((from + to) / 2 - low) / (high - low);
        at = Vector3D.of(lowAt).multiply(1 - part).add(Vector3D.of(highAt).multiply(part));
        return true;
    }

    private void interval(double[] t, double[] over) {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            if (over[i] == 0) {
                stretch(t, 3 * i, 3 * i, 0);
            } else if (over[i] * over[j] < 0) {
                stretch(t, 3 * i, 3 * j, over[i] / (over[i] - over[j]));
            }
        }
    }

    /** Takes in the point a part of the way from one corner to another. */
    private void stretch(double[] t, int from, int to, double part) {
        double x = t[from] + part * (t[to] - t[from]);
        double y = t[from + 1] + part * (t[to + 1] - t[from + 1]);
        double z = t[from + 2] + part * (t[to + 2] - t[from + 2]);
        double along = x * line[0] + y * line[1] + z * line[2];
        if (along < low) {
            low = along;
            set(lowAt, x, y, z);
        }
        if (along > high) {
            high = along;
            set(highAt, x, y, z);
        }
    }

    // ---- in one plane -------------------------------------------------------------------------------------------

    /** In one plane they overlap unless one of the six sides parts them. */
    private boolean overlapInPlane() {
        if (parted(p, normalP) || parted(q, normalQ)) {
            return false;
        }
        at = middleOfClipped();
        return true;
    }

    private boolean parted(double[] t, double[] normal) {
        for (int i = 0; i < 3; i++) {
            outward(t, i, normal);
            double farP = reach(p, 1);
            double nearP = -reach(p, -1);
            double farQ = reach(q, 1);
            double nearQ = -reach(q, -1);
            if (Math.min(farP, farQ) - Math.max(nearP, nearQ) <= LONG_MM) {
                return true;
            }
        }
        return false;
    }

    /** Sets the line to the unit normal of a side in the triangle's plane, away from the triangle. */
    private void outward(double[] t, int i, double[] normal) {
        int from = 3 * i;
        int to = 3 * ((i + 1) % 3);
        set(side, t[to] - t[from], t[to + 1] - t[from + 1], t[to + 2] - t[from + 2]);
        cross(side, normal, line);
        unit(line);
    }

    private double reach(double[] t, double sign) {
        return Math.max(sign * dot(t, 0, line), Math.max(sign * dot(t, 3, line), sign * dot(t, 6, line)));
    }

    /** The middle of the corners of P clipped by each side of Q in turn (Sutherland, Hodgman 1974). */
    private Vector3D middleOfClipped() {
        double[] ring = p;
        for (int i = 0; i < 3; i++) {
            outward(q, i, normalQ);
            ring = clipped(ring, dot(q, 3 * i, line));
        }
        Vector3D sum = Vector3D.ZERO;
        for (int k = 0; k < ring.length; k += 3) {
            sum = sum.add(Vector3D.of(ring[k], ring[k + 1], ring[k + 2]));
        }
        return sum.multiply(3.0 / ring.length);
    }

    private double[] clipped(double[] ring, double edge) {
        double[] kept = new double[2 * ring.length];
        int count = 0;
        for (int i = 0; i < ring.length; i += 3) {
            int j = (i + 3) % ring.length;
            double here = dot(ring, i, line) - edge;
            double there = dot(ring, j, line) - edge;
            if (here <= 0) {
                System.arraycopy(ring, i, kept, count, 3);
                count += 3;
            }
            if (here <= 0 != there <= 0) {
                for (int k = 0; k < 3; k++) {
                    kept[count++] = ring[i + k] + (ring[j + k] - ring[i + k]) * (here / (here - there));
                }
            }
        }
        return Arrays.copyOf(kept, count);
    }

    // ---- arithmetic ---------------------------------------------------------------------------------------------

    private static void heights(double[] t, double[] base, double[] normal, double[] into) {
        for (int i = 0; i < 3; i++) {
            double height = (t[3 * i] - base[0]) * normal[0]
                    + (t[3 * i + 1] - base[1]) * normal[1]
                    + (t[3 * i + 2] - base[2]) * normal[2];
            into[i] = Math.abs(height) <= IN_PLANE_MM ? 0 : height;
        }
    }

    private static boolean flat(double[] over) {
        return over[0] == 0 && over[1] == 0 && over[2] == 0;
    }

    private static boolean oneSided(double[] over) {
        return (over[0] > 0 && over[1] > 0 && over[2] > 0) || (over[0] < 0 && over[1] < 0 && over[2] < 0);
    }

    private void normal(double[] t, double[] into) {
        set(side, t[3] - t[0], t[4] - t[1], t[5] - t[2]);
        set(line, t[6] - t[0], t[7] - t[1], t[8] - t[2]);
        cross(side, line, into);
        unit(into);
    }

    private static void cross(double[] u, double[] v, double[] into) {
        set(into, u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
    }

    private static void set(double[] v, double x, double y, double z) {
        v[0] = x;
        v[1] = y;
        v[2] = z;
    }

    private static boolean unit(double[] v) {
        double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        if (length == 0) {
            return false;
        }
        set(v, v[0] / length, v[1] / length, v[2] / length);
        return true;
    }

    private static double dot(double[] t, int at, double[] v) {
        return t[at] * v[0] + t[at + 1] * v[1] + t[at + 2] * v[2];
    }
}
