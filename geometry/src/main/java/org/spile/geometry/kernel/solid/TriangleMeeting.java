package org.spile.geometry.kernel.solid;

/**
 * Whether two triangles meet in more than a point: along a line, or in an area if they lie in one plane.
 *
 * <p>The intervals that both cut from the common line of their planes are compared (Möller, J. Graphics Tools 2, 1997).
 * Corners within a tenth of the contact tolerance of a plane lie in it. One object for many pairs.
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

    private void load(double[] triangles, int first, int second) {
        for (int k = 0; k < 9; k++) {
            p[k] = triangles[9 * first + k] - triangles[9 * first + k % 3];
            q[k] = triangles[9 * second + k] - triangles[9 * first + k % 3];
        }
        normal(p, normalP);
        normal(q, normalQ);
        heights(p, q, normalQ, overQ);
        heights(q, p, normalP, overP);
    }

    private boolean meetOnLine() {
        interval(p, overQ);
        double lowP = low;
        double highP = high;
        interval(q, overP);
        return Math.min(highP, high) - Math.max(lowP, low) > LONG_MM;
    }

    private void interval(double[] t, double[] over) {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            double here = dot(t, 3 * i, line);
            if (over[i] == 0) {
                stretch(here);
            } else if (over[i] * over[j] < 0) {
                stretch(here + (dot(t, 3 * j, line) - here) * (over[i] / (over[i] - over[j])));
            }
        }
    }

    private void stretch(double at) {
        low = Math.min(low, at);
        high = Math.max(high, at);
    }

    /** In one plane they overlap unless one of the six sides parts them. */
    private boolean overlapInPlane() {
        return !parted(p, normalP) && !parted(q, normalQ);
    }

    private boolean parted(double[] t, double[] normal) {
        for (int i = 0; i < 3; i++) {
            int j = 3 * ((i + 1) % 3);
            double[] side = {t[j] - t[3 * i], t[j + 1] - t[3 * i + 1], t[j + 2] - t[3 * i + 2]};
            cross(side, normal, line);
            unit(line);
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

    private double reach(double[] t, double sign) {
        return Math.max(sign * dot(t, 0, line), Math.max(sign * dot(t, 3, line), sign * dot(t, 6, line)));
    }

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

    private static void normal(double[] t, double[] into) {
        double[] u = {t[3] - t[0], t[4] - t[1], t[5] - t[2]};
        double[] v = {t[6] - t[0], t[7] - t[1], t[8] - t[2]};
        cross(u, v, into);
        unit(into);
    }

    private static void cross(double[] u, double[] v, double[] into) {
        into[0] = u[1] * v[2] - u[2] * v[1];
        into[1] = u[2] * v[0] - u[0] * v[2];
        into[2] = u[0] * v[1] - u[1] * v[0];
    }

    private static boolean unit(double[] v) {
        double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        if (length == 0) {
            return false;
        }
        v[0] /= length;
        v[1] /= length;
        v[2] /= length;
        return true;
    }

    private static double dot(double[] t, int at, double[] v) {
        return t[at] * v[0] + t[at + 1] * v[1] + t[at + 2] * v[2];
    }
}
