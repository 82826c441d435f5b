package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * How deep two convex cores overlap when at least one has a disc, between two bounds: one object per thread, no
 * allocation after the first.
 *
 * <p>The depth is the least of h(n) = h_A(n) + h_B(−n) over all unit n, and a disc leaves no finite set of directions
 * that decides it. So the sphere of directions is cut finer and finer, triangle by triangle, and a triangle that can
 * hold nothing shallower than the best depth found is dropped ({@link TriangleFloor} says how low one can reach).
 *
 * <pre>
 *        1
 *       / \        each triangle is cut into four at the middles of its sides,
 *      /___\       put back on the sphere
 *     / \ / \
 *    2---+---3
 * </pre>
 */
final class CurvedDepth {
    private static final int MOST_TRIANGLES = 1024;
    private static final int MOST_LEVELS = 20;

    /** The bounds may stay open by this; depths are shown to a hundredth of a millimetre. */
    private static final double OPEN_MM = 1e-5;

    /** Six numbers a corner: its direction, and the point of A − B farthest along it. */
    private static final int CORNER = 6;

    private static final int TRIANGLE = 3 * CORNER;

    private final RimPoint rimA = new RimPoint();
    private final RimPoint rimB = new RimPoint();
    private final TriangleFloor floor = new TriangleFloor();
    private final double[] middles = new double[TRIANGLE];
    /** Made when first needed: most pairs never ask how deep a round thing stands in. */
    private double[] level = {};

    private double[] next = {};
    private double[] low = {};
    private double[] nextLow = {};
    private int count;
    private int nextCount;

    private ConvexCore a;
    private ConvexCore b;
    private double offX;
    private double offY;
    private double offZ;

    /** No shift shorter than this separates. */
    double leastMm;
    /** A shift of this length along the direction separates. */
    double depthMm;

    double nx;
    double ny;
    double nz;

    /** Measures A, shifted, against B, starting from a depth already found. */
    void measure(ConvexCore first, double dx, double dy, double dz, ConvexCore second, ConvexDepth found) {
        a = first;
        b = second;
        offX = first.centreX() - second.centreX() + dx;
        offY = first.centreY() - second.centreY() + dy;
        offZ = first.centreZ() - second.centreZ() + dz;
        depthMm = -found.separation;
        nx = found.nx;
        ny = found.ny;
        nz = found.nz;
        leastMm = depthMm;
        startWithOctahedron();
        for (int k = 0; k < MOST_LEVELS && count > 0 && 4 * count <= MOST_TRIANGLES; k++) {
            refine();
        }
        for (int i = 0; i < count; i++) {
            leastMm = Math.min(leastMm, low[i]);
        }
        leastMm = Math.max(0, Math.min(leastMm, depthMm));
    }

    private void startWithOctahedron() {
        if (level.length == 0) {
            level = new double[TRIANGLE * MOST_TRIANGLES];
            next = new double[TRIANGLE * MOST_TRIANGLES];
            low = new double[MOST_TRIANGLES];
            nextLow = new double[MOST_TRIANGLES];
        }
        count = 8;
        for (int i = 0; i < count; i++) {
            low[i] = 0;
            for (int k = 0; k < 3; k++) {
                double sign = (i >> k & 1) == 0 ? 1 : -1;
                int at = TRIANGLE * i + CORNER * k;
                direct(level, at, k == 0 ? sign : 0, k == 1 ? sign : 0, k == 2 ? sign : 0);
            }
        }
    }

    private void refine() {
        nextCount = 0;
        for (int i = 0; i < count; i++) {
            if (isDropped(low[i])) {
                continue;
            }
            int at = TRIANGLE * i;
            for (int side = 0; side < 3; side++) {
                int p = at + CORNER * side;
                int q = at + CORNER * ((side + 1) % 3);
                double x = level[p] + level[q];
                double y = level[p + 1] + level[q + 1];
                double z = level[p + 2] + level[q + 2];
                double scale = 1 / Math.sqrt(x * x + y * y + z * z);
                direct(middles, CORNER * side, x * scale, y * scale, z * scale);
            }
            add(low[i], level, at, middles, 0, middles, 2 * CORNER);
            add(low[i], middles, 0, level, at + CORNER, middles, CORNER);
            add(low[i], middles, 2 * CORNER, middles, CORNER, level, at + 2 * CORNER);
            add(low[i], middles, 0, middles, CORNER, middles, 2 * CORNER);
        }
        double[] swapped = level;
        level = next;
        next = swapped;
        swapped = low;
        low = nextLow;
        nextLow = swapped;
        count = nextCount;
    }

    /** Whether a triangle can gain next to nothing; what it might gain is kept as a bound. */
    private boolean isDropped(double reached) {
        if (reached < depthMm - OPEN_MM) {
            return false;
        }
        leastMm = Math.min(leastMm, reached);
        return true;
    }

    private void add(double parent, double[] p, int i, double[] q, int j, double[] r, int k) {
        int at = TRIANGLE * nextCount;
        System.arraycopy(p, i, next, at, CORNER);
        System.arraycopy(q, j, next, at + CORNER, CORNER);
        System.arraycopy(r, k, next, at + 2 * CORNER, CORNER);
        double reached = Math.max(parent, floor.of(next, at, CORNER));
        if (!isDropped(reached)) {
            nextLow[nextCount++] = reached;
        }
    }

    /** Sets a corner's direction and farthest point of A − B; takes its reach if that is the least so far. */
    private void direct(double[] into, int at, double x, double y, double z) {
        int i = a.extreme(x, y, z);
        int j = b.extreme(-x, -y, -z);
        rimA.find(a, x, y, z);
        rimB.find(b, -x, -y, -z);
        double sx = a.localX(i) - b.localX(j) + offX + (rimA.x - rimB.x);
        double sy = a.localY(i) - b.localY(j) + offY + (rimA.y - rimB.y);
        double sz = a.localZ(i) - b.localZ(j) + offZ + (rimA.z - rimB.z);
        into[at] = x;
        into[at + 1] = y;
        into[at + 2] = z;
        into[at + 3] = sx;
        into[at + 4] = sy;
        into[at + 5] = sz;
        double far = sx * x + sy * y + sz * z;
        if (far < depthMm) {
            depthMm = far;
            nx = x;
            ny = y;
            nz = z;
        }
    }
}
