package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The distance of two convex cores, with a lower and an upper bound: one object per thread, no allocation.
 *
 * <p>The simplex method of Gilbert, Johnson, Keerthi (IEEE J. Robotics and Automation 4, 1988), as refined by van den
 * Bergen (J. Graphics Tools 4, 1999). Let v be the simplex' nearest point to the origin in A − B and w the support
 * point against v: then v·w/|v| ≤ distance ≤ |v| (van den Bergen, equation 2). The search ends when the bounds are
 * within the arithmetic tolerance, when w brings no new corner pair, or when |v| no longer falls (Montanari, Petrinic,
 * Barbieri, ACM Trans. Graphics 36, 2017, on why that is needed).
 *
 * <p>Rounding radii are left out. A may be shifted, for travels.
 */
final class ConvexDistance {
    private static final int MOST_STEPS = 200;
    private static final double CLOSE = GeometryTolerance.ARITHMETIC_MM;

    final Simplex simplex = new Simplex();
    private ConvexCore a;
    private ConvexCore b;
    private double shiftX;
    private double shiftY;
    private double shiftZ;
    private double centreX;
    private double centreY;
    private double centreZ;

    boolean overlap;
    double lower;
    double upper;
    /** Unit direction from A to B that certifies the lower bound. */
    double nx;

    double ny;
    double nz;

    /** Measures A, shifted, against B. */
    void measure(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        a = first;
        b = second;
        shiftX = dx;
        shiftY = dy;
        shiftZ = dz;
        centreX = second.x(0);
        centreY = second.y(0);
        centreZ = second.z(0);
        simplex.size = 0;
        addSupport(second.x(0) - first.x(0) - dx, second.y(0) - first.y(0) - dy, second.z(0) - first.z(0) - dz);
        search();
    }

    /** Measures again after a shift, starting from the corners that were nearest last time. */
    void measureAgain(double dx, double dy, double dz) {
        shiftX = dx;
        shiftY = dy;
        shiftZ = dz;
        if (a.discMm() > 0 || b.discMm() > 0 || overlap || simplex.size == 0) {
            measure(a, dx, dy, dz, b);
            return;
        }
        for (int k = 0; k < simplex.size; k++) {
            setCorner(k, simplex.cornerA[k], simplex.cornerB[k]);
        }
        search();
    }

    private void search() {
        Simplex s = simplex;
        lower = 0;
        overlap = false;
        nx = 0;
        ny = 0;
        nz = 0;
        upper = Double.POSITIVE_INFINITY;
        s.reduce();
        for (int step = 0; step < MOST_STEPS; step++) {
            double norm = Math.sqrt(s.vx * s.vx + s.vy * s.vy + s.vz * s.vz);
            if (norm >= upper) {
                return;
            }
            upper = norm;
            if (norm <= CLOSE / 100) {
                return;
            }
            addSupport(-s.vx, -s.vy, -s.vz);
            int w = s.size - 1;
            double bound = (s.vx * s.diff[3 * w] + s.vy * s.diff[3 * w + 1] + s.vz * s.diff[3 * w + 2]) / norm;
            boolean first = nx == 0 && ny == 0 && nz == 0;
            if (bound > lower || first) {
                lower = Math.max(0, Math.min(bound, upper)); // rounding may lift it above
                nx = -s.vx / norm;
                ny = -s.vy / norm;
                nz = -s.vz / norm;
            }
            if (norm - bound <= CLOSE || isRepeated(w)) {
                s.size--;
                return;
            }
            if (!s.reduce()) {
                overlap = true;
                lower = 0;
                upper = 0;
                return;
            }
        }
    }

    private void addSupport(double dx, double dy, double dz) {
        setCorner(simplex.size, a.extreme(dx, dy, dz), b.extreme(-dx, -dy, -dz));
        if (a.discMm() > 0) {
            addDisc(a, simplex.onA, dx, dy, dz);
        }
        if (b.discMm() > 0) {
            addDisc(b, simplex.onB, -dx, -dy, -dz);
        }
        simplex.size++;
    }

    private void setCorner(int k, int i, int j) {
        Simplex s = simplex;
        s.cornerA[k] = i;
        s.cornerB[k] = j;
        double ax = a.x(i) + shiftX - centreX;
        double ay = a.y(i) + shiftY - centreY;
        double az = a.z(i) + shiftZ - centreZ;
        double bx = b.x(j) - centreX;
        double by = b.y(j) - centreY;
        double bz = b.z(j) - centreZ;
        s.onA[3 * k] = ax;
        s.onA[3 * k + 1] = ay;
        s.onA[3 * k + 2] = az;
        s.onB[3 * k] = bx;
        s.onB[3 * k + 1] = by;
        s.onB[3 * k + 2] = bz;
        s.diff[3 * k] = ax - bx;
        s.diff[3 * k + 1] = ay - by;
        s.diff[3 * k + 2] = az - bz;
    }

    /** Moves the newest corner out to the rim of its disc: the part of the direction across the axis, to length. */
    private void addDisc(ConvexCore core, double[] on, double dx, double dy, double dz) {
        double along = dx * core.axisX() + dy * core.axisY() + dz * core.axisZ();
        double ox = dx - along * core.axisX();
        double oy = dy - along * core.axisY();
        double oz = dz - along * core.axisZ();
        double length = Math.sqrt(ox * ox + oy * oy + oz * oz);
        double all = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (length <= 1e-14 * all) {
            return;
        }
        double scale = core.discMm() / length;
        int k = 3 * simplex.size;
        on[k] += ox * scale;
        on[k + 1] += oy * scale;
        on[k + 2] += oz * scale;
        for (int i = 0; i < 3; i++) {
            simplex.diff[k + i] = simplex.onA[k + i] - simplex.onB[k + i];
        }
    }

    private boolean isRepeated(int w) {
        Simplex s = simplex;
        for (int k = 0; k < w; k++) {
            if (s.diff[3 * k] == s.diff[3 * w]
                    && s.diff[3 * k + 1] == s.diff[3 * w + 1]
                    && s.diff[3 * k + 2] == s.diff[3 * w + 2]) {
                return true;
            }
        }
        return false;
    }

    /** A witness coordinate on A (shifted), 0 for x, 1 for y, 2 for z. */
    double witnessA(int axis) {
        return centre(axis) + weighted(simplex.onA, axis);
    }

    /** A witness coordinate on B. */
    double witnessB(int axis) {
        return centre(axis) + weighted(simplex.onB, axis);
    }

    private double centre(int axis) {
        return axis == 0 ? centreX : axis == 1 ? centreY : centreZ;
    }

    private double weighted(double[] on, int axis) {
        double sum = 0;
        for (int k = 0; k < simplex.size; k++) {
            sum += simplex.weight[k] * on[3 * k + axis];
        }
        return sum;
    }
}
