package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The distance of two convex cores, with a lower and an upper bound: one object per thread, no allocation.
 *
 * <p>The simplex method of Gilbert, Johnson, Keerthi (IEEE J. Robotics and Automation 4, 1988), as refined by van den
 * Bergen (J. Graphics Tools 4, 1999). Let v be the simplex' nearest point to the origin in A − B and w the support
 * point against v: then v·w/|v| ≤ distance ≤ |v| (van den Bergen, equation 2); the upper bound is taken from the
 * weighted points, which lie in A and B whatever the rounding. The search ends when the bounds are within the
 * arithmetic tolerance, when w brings no new corner pair, or when |v| no longer falls (Montanari, Petrinic, Barbieri,
 * ACM Trans. Graphics 36, 2017, on why that is needed).
 *
 * <p>Discs are searched as inscribed polygons whose corners crowd about the contact more and more, while the lower
 * bound is always that of the true disc; so both bounds hold, and they meet.
 *
 * <p>Rounding radii are left out. A may be shifted, for travels.
 */
final class ConvexDistance {
    private static final int MOST_STEPS = 100;
    private static final int MOST_ROUNDS = 14;
    private static final double CLOSE = GeometryTolerance.ARITHMETIC_MM;

    private final Simplex simplex = new Simplex();
    private final Corners cornersA = new Corners();
    private final Corners cornersB = new Corners();
    private ConvexCore a;
    private ConvexCore b;
    private double shiftX;
    private double shiftY;
    private double shiftZ;
    private double centreX;
    private double centreY;
    private double centreZ;
    /** The nearest points found, about the centre: three numbers on A, three on B. */
    private final double[] witness = new double[6];

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
        place(dx, dy, dz);
        centreX = second.x(0);
        centreY = second.y(0);
        centreZ = second.z(0);
        if (isRound()) {
            measureRound(second.x(0) - first.x(0) - dx, second.y(0) - first.y(0) - dy, second.z(0) - first.z(0) - dz);
            return;
        }
        cornersA.load(a, centreX, centreY, centreZ);
        cornersB.load(b, centreX, centreY, centreZ);
        simplex.size = 0;
        addSupport(cornersB.x[0] - cornersA.x[0] - dx, cornersB.y[0] - cornersA.y[0] - dy, -cornersA.z[0] - dz);
        search();
        settle();
    }

    /** Measures the same pair again after another shift, starting from the corners that were nearest last time. */
    void measureAgain(double dx, double dy, double dz) {
        place(dx, dy, dz);
        if (isRound() || overlap || simplex.size == 0) {
            measure(a, dx, dy, dz, b);
            return;
        }
        for (int k = 0; k < simplex.size; k++) {
            setCorner(k, simplex.cornerA[k], simplex.cornerB[k]);
        }
        search();
        settle();
    }

    private void place(double dx, double dy, double dz) {
        shiftX = dx;
        shiftY = dy;
        shiftZ = dz;
        lower = 0;
        overlap = false;
        nx = 0;
        ny = 0;
        nz = 0;
        upper = Double.POSITIVE_INFINITY;
    }

    private boolean isRound() {
        return a.discMm() > 0 || b.discMm() > 0;
    }

    private void keepWitness() {
        for (int axis = 0; axis < 3; axis++) {
            witness[axis] = weighted(simplex.onA, axis);
            witness[3 + axis] = weighted(simplex.onB, axis);
        }
    }

    /** Rounding may leave the bounds crossed by a last digit. */
    private void settle() {
        lower = Math.min(lower, upper);
    }

    // ---- discs --------------------------------------------------------------------------------------------------

    /** Narrows the fans of rim corners about the direction found, round by round, until the bounds meet. */
    private void measureRound(double towardsX, double towardsY, double towardsZ) {
        double dx = towardsX;
        double dy = towardsY;
        double dz = towardsZ;
        double fan = Math.PI;
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            load(cornersA, a, dx, dy, dz, fan);
            load(cornersB, b, -dx, -dy, -dz, fan);
            simplex.size = 0;
            addSupport(dx, dy, dz);
            double known = lower;
            upper = Double.POSITIVE_INFINITY;
            search();
            if (overlap) {
                return;
            }
            lower = known;
            boundByDiscs();
            if (upper < best) {
                best = upper;
                keepWitness();
            }
            if (best - lower <= CLOSE / 2 || best <= CLOSE / 2) {
                break;
            }
            dx = -simplex.vx;
            dy = -simplex.vy;
            dz = -simplex.vz;
            double off = Math.max(
                    a.discMm() > 0 ? cornersA.fromFan(dx, dy, dz) : 0,
                    b.discMm() > 0 ? cornersB.fromFan(-dx, -dy, -dz) : 0);
            fan = off > fan ? Math.min(Math.PI, 2 * off) : fan / 6;
        }
        upper = best;
        settle();
    }

    private void load(Corners corners, ConvexCore core, double dx, double dy, double dz, double fan) {
        if (core.discMm() > 0) {
            corners.loadWithRim(core, centreX, centreY, centreZ, dx, dy, dz, fan);
        } else {
            corners.load(core, centreX, centreY, centreZ);
        }
    }

    /** The separation of the true discs along the direction found is a lower bound whatever polygons stood for them. */
    private void boundByDiscs() {
        double norm = Math.sqrt(simplex.vx * simplex.vx + simplex.vy * simplex.vy + simplex.vz * simplex.vz);
        if (!(norm > 0)) {
            return;
        }
        double x = -simplex.vx / norm;
        double y = -simplex.vy / norm;
        double z = -simplex.vz / norm;
        int i = a.extreme(x, y, z);
        int j = b.extreme(-x, -y, -z);
        double bound = x * (b.x(j) - a.x(i) - shiftX)
                + y * (b.y(j) - a.y(i) - shiftY)
                + z * (b.z(j) - a.z(i) - shiftZ)
                - a.discReach(x, y, z)
                - b.discReach(x, y, z);
        if (bound > lower || (nx == 0 && ny == 0 && nz == 0)) {
            lower = Math.max(0, bound);
            nx = x;
            ny = y;
            nz = z;
        }
    }

    // ---- corners ------------------------------------------------------------------------------------------------

    private void search() {
        Simplex s = simplex;
        boolean round = isRound();
        s.reduce();
        for (int step = 0; step < MOST_STEPS; step++) {
            if (s.reached >= upper) {
                return;
            }
            upper = s.reached;
            double norm = Math.sqrt(s.vx * s.vx + s.vy * s.vy + s.vz * s.vz);
            if (upper <= CLOSE / 100 || !(norm > 0)) {
                return;
            }
            addSupport(-s.vx, -s.vy, -s.vz);
            int w = s.size - 1;
            double bound = (s.vx * s.diff[3 * w] + s.vy * s.diff[3 * w + 1] + s.vz * s.diff[3 * w + 2]) / norm;
            if (!round && (bound > lower || (nx == 0 && ny == 0 && nz == 0))) {
                lower = Math.max(0, bound);
                nx = -s.vx / norm;
                ny = -s.vy / norm;
                nz = -s.vz / norm;
            }
            if (upper - bound <= CLOSE / 10 || isRepeated(w)) {
                s.size--;
                return;
            }
            if (!s.reduce()) {
                if (bound > 0 || lower > 0) {
                    // A flat tetrahedron seems to hold the origin, but a separating direction is already known.
                    s.size--;
                    return;
                }
                overlap = true;
                lower = 0;
                upper = 0;
                return;
            }
        }
    }

    private void addSupport(double dx, double dy, double dz) {
        setCorner(simplex.size, cornersA.extreme(dx, dy, dz), cornersB.extreme(-dx, -dy, -dz));
        simplex.size++;
    }

    private void setCorner(int k, int i, int j) {
        Simplex s = simplex;
        s.cornerA[k] = i;
        s.cornerB[k] = j;
        double ax = cornersA.x[i] + shiftX;
        double ay = cornersA.y[i] + shiftY;
        double az = cornersA.z[i] + shiftZ;
        double bx = cornersB.x[j];
        double by = cornersB.y[j];
        double bz = cornersB.z[j];
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

    private boolean isRepeated(int w) {
        Simplex s = simplex;
        for (int k = 0; k < w; k++) {
            if (s.cornerA[k] == s.cornerA[w] && s.cornerB[k] == s.cornerB[w]) {
                return true;
            }
        }
        return false;
    }

    /** A witness coordinate on A (shifted), 0 for x, 1 for y, 2 for z. */
    double witnessA(int axis) {
        return centre(axis) + (isRound() ? witness[axis] : weighted(simplex.onA, axis));
    }

    /** A witness coordinate on B. */
    double witnessB(int axis) {
        return centre(axis) + (isRound() ? witness[3 + axis] : weighted(simplex.onB, axis));
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
