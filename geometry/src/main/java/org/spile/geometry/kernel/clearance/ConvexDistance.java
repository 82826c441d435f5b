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
 * <p>A disc's support point is the true point of its rim, so round things are searched as they are. Rounding radii are
 * left out. A may be shifted, for travels. Coordinates are taken about B's centre.
 */
final class ConvexDistance {
    private static final int MOST_STEPS = 60;
    private static final int MOST_POLISHES = 5;
    private static final double CLOSE = GeometryTolerance.ARITHMETIC_MM;

    private final Simplex simplex = new Simplex();
    private final RimPoint rimA = new RimPoint();
    private final RimPoint rimB = new RimPoint();
    private ConvexCore a;
    private ConvexCore b;
    private boolean round;
    /** From B's centre to that of the shifted A. */
    private double offX;

    private double offY;
    private double offZ;

    /** The nearest points found: three numbers on A about its centre, three on B about its own. */
    private final double[] witness = new double[6];

    private final double[] knownWitness = new double[6];

    /** Whether to spare no trouble: the best of all steps is kept, and weights are refined. */
    private boolean careful;

    /** The greatest separation along a direction tried, negative if none separates yet. */
    private double separation;

    boolean overlap;
    double lower;
    double upper;
    /** Unit direction from A to B that certifies the lower bound. */
    double nx;

    double ny;
    double nz;

    /** Measures A, shifted, against B. */
    void measure(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        place(first, dx, dy, dz, second);
        start(-offX, -offY, -offZ);
        settle();
    }

    /**
     * Measures again, after another shift or after the pair has moved a little, starting from the corners that were
     * nearest last time.
     */
    void measureAgain(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        boolean sameKind = a != null && first.count() == a.count() && second.count() == b.count();
        if (!sameKind || overlap || round || first.discMm() > 0 || second.discMm() > 0) {
            boolean directed = sameKind && !overlap && (nx != 0 || ny != 0 || nz != 0);
            double x = nx;
            double y = ny;
            double z = nz;
            place(first, dx, dy, dz, second);
            start(directed ? x : -offX, directed ? y : -offY, directed ? z : -offZ);
        } else {
            place(first, dx, dy, dz, second);
            for (int k = 0; k < simplex.size; k++) {
                setCorner(k, simplex.cornerA[k], simplex.cornerB[k]);
            }
            search();
        }
        settle();
    }

    private void place(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        a = first;
        b = second;
        round = first.discMm() > 0 || second.discMm() > 0;
        offX = first.centreX() - second.centreX() + dx;
        offY = first.centreY() - second.centreY() + dy;
        offZ = first.centreZ() - second.centreZ() + dz;
        lower = 0;
        separation = Double.NEGATIVE_INFINITY;
        overlap = false;
        nx = 0;
        ny = 0;
        nz = 0;
        upper = Double.POSITIVE_INFINITY;
    }

    private void start(double dx, double dy, double dz) {
        simplex.size = 0;
        simplex.isRound = false;
        addSupport(dx, dy, dz);
        search();
    }

    /** Keeps the witnesses; where rounding has left the bounds apart, searches again step by careful step. */
    private void settle() {
        if (!overlap && upper - lower > CLOSE && upper > CLOSE) {
            upper = Double.POSITIVE_INFINITY;
            careful = true;
            start(-offX, -offY, -offZ);
            double drawnMm = 1;
            for (int again = 0; again < MOST_POLISHES && !overlap && upper - lower > CLOSE && upper > CLOSE; again++) {
                polish(drawnMm);
                drawnMm /= 10;
            }
            careful = false;
        }
        lower = Math.min(lower, upper);
    }

    /**
     * Close to contact the crowded corners on rims leave few digits of a direction. With the pair drawn apart along the
     * direction found so far they leave more; the direction so found bounds the pair as it stands, and the points do.
     */
    private void polish(double drawnMm) {
        double known = separation;
        double knownUpper = upper;
        double px = nx;
        double py = ny;
        double pz = nz;
        System.arraycopy(witness, 0, knownWitness, 0, 6);
        draw(-drawnMm * px, -drawnMm * py, -drawnMm * pz);
        lower = 0;
        separation = Double.NEGATIVE_INFINITY;
        upper = Double.POSITIVE_INFINITY;
        start(px, py, pz);
        draw(drawnMm * px, drawnMm * py, drawnMm * pz);
        simplex.size = 0;
        addSupport(nx, ny, nz);
        separation = -(nx * simplex.diff[0] + ny * simplex.diff[1] + nz * simplex.diff[2]);
        if (separation < known) {
            separation = known;
            nx = px;
            ny = py;
            nz = pz;
        }
        lower = Math.max(0, separation);
        witness[0] += drawnMm * px;
        witness[1] += drawnMm * py;
        witness[2] += drawnMm * pz;
        double x = witness[3] - witness[0];
        double y = witness[4] - witness[1];
        double z = witness[5] - witness[2];
        upper = Math.sqrt(x * x + y * y + z * z);
        if (upper > knownUpper) {
            upper = knownUpper;
            System.arraycopy(knownWitness, 0, witness, 0, 6);
        }
    }

    private void draw(double dx, double dy, double dz) {
        offX += dx;
        offY += dy;
        offZ += dz;
    }

    private void keepWitness() {
        Simplex s = simplex;
        double ax = offX;
        double ay = offY;
        double az = offZ;
        double bx = 0;
        double by = 0;
        double bz = 0;
        for (int k = 0; k < s.size; k++) {
            double w = s.weight[k];
            int i = s.cornerA[k];
            int j = s.cornerB[k];
            ax += w * a.localX(i);
            ay += w * a.localY(i);
            az += w * a.localZ(i);
            bx += w * b.localX(j);
            by += w * b.localY(j);
            bz += w * b.localZ(j);
        }
        if (round) {
            ax += s.weighted(s.rimA, 0);
            ay += s.weighted(s.rimA, 1);
            az += s.weighted(s.rimA, 2);
            bx += s.weighted(s.rimB, 0);
            by += s.weighted(s.rimB, 1);
            bz += s.weighted(s.rimB, 2);
        }
        witness[0] = ax;
        witness[1] = ay;
        witness[2] = az;
        witness[3] = bx;
        witness[4] = by;
        witness[5] = bz;
    }

    private void search() {
        Simplex s = simplex;
        s.reduce();
        double last = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            double reached = careful ? keepIfNearer() : 0;
            double norm = Math.sqrt(s.vx * s.vx + s.vy * s.vy + s.vz * s.vz);
            double now = careful ? reached : norm;
            if (!(now < last) || norm <= CLOSE / 100) {
                break;
            }
            last = now;
            addSupport(-s.vx, -s.vy, -s.vz);
            int w = s.size - 1;
            double bound = (s.vx * s.diff[3 * w] + s.vy * s.diff[3 * w + 1] + s.vz * s.diff[3 * w + 2]) / norm;
            if (bound > separation) {
                separation = bound;
                lower = Math.max(0, bound);
                nx = -s.vx / norm;
                ny = -s.vy / norm;
                nz = -s.vz / norm;
            }
            if (norm - lower <= CLOSE / 10 || s.repeats(w)) {
                s.size--;
                break;
            }
            if (!s.reduce()) {
                if (lower <= 0) {
                    overlap = true;
                    upper = 0;
                    return;
                }
                // A flat tetrahedron seems to hold the origin, but a separating direction is already known.
                s.size--;
                break;
            }
        }
        if (!careful) {
            upper = s.reached();
            keepWitness();
        }
    }

    private double keepIfNearer() {
        simplex.refine();
        double reached = simplex.reached();
        if (reached < upper) {
            upper = reached;
            keepWitness();
        }
        return reached;
    }

    private void addSupport(double dx, double dy, double dz) {
        int k = simplex.size++;
        setCorner(k, a.extreme(dx, dy, dz), b.extreme(-dx, -dy, -dz));
        if (round) {
            rimA.find(a, dx, dy, dz);
            rimB.find(b, -dx, -dy, -dz);
            simplex.addRims(k, rimA, rimB);
        }
    }

    private void setCorner(int k, int i, int j) {
        simplex.set(
                k,
                i,
                j,
                a.localX(i) - b.localX(j) + offX,
                a.localY(i) - b.localY(j) + offY,
                a.localZ(i) - b.localZ(j) + offZ);
    }

    /** A witness coordinate on A (shifted), 0 for x, 1 for y, 2 for z. */
    double witnessA(int axis) {
        return centre(axis) + witness[axis];
    }

    /** A witness coordinate on B. */
    double witnessB(int axis) {
        return centre(axis) + witness[3 + axis];
    }

    private double centre(int axis) {
        return axis == 0 ? b.centreX() : axis == 1 ? b.centreY() : b.centreZ();
    }
}
