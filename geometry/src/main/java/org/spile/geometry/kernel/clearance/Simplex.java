package org.spile.geometry.kernel.clearance;

/**
 * Up to four points of the difference A − B, and the point of their hull nearest to the origin.
 *
 * <p>The nearest point is found region by region (Ericson, Real-Time Collision Detection, 2005, sections 5.1.2, 5.1.5
 * and 5.1.6). Its direction comes from the geometry of the nearest feature, never from the weighted sum of its
 * corners, which loses all digits close to contact: at an edge the double cross product, at a triangle the normal.
 */
final class Simplex {
    /** Where the direction by geometry departs from the sum by more than this, the feature is a sliver. */
    private static final double SLIVER = 1e-12;

    /** Beyond this distance, in mm, the weighted sum keeps enough digits to give a direction. */
    private static final double FAR = 1e-2;

    /** The differences, three numbers each. */
    final double[] diff = new double[12];

    /** How far out on its rim each point stands from its corner; used if {@link #isRound}. */
    final double[] rimA = new double[12];

    final double[] rimB = new double[12];
    /** Which corner of A and of B each came from. */
    final int[] cornerA = new int[4];

    final int[] cornerB = new int[4];
    final double[] weight = new double[4];
    int size;
    /** Whether a corner pair no longer names a point, since it was moved out to a rim. */
    boolean isRound;

    /** The nearest point's vector; it need not be the exact length, but is the exact direction. */
    double vx;

    double vy;
    double vz;

    private final int[] kept = new int[3];
    private final double[] keptWeight = new double[3];

    /** Best of the triangles tried. */
    private double best2;

    private int bestSize;
    private final int[] best = new int[3];
    private final double[] bestWeight = new double[3];

    /** Reduces to the feature nearest to the origin; false if the origin is inside a tetrahedron. */
    boolean reduce() {
        if (size == 1) {
            weight[0] = 1;
        } else if (size == 2) {
            nearestOnEdge(0, 1);
            take(kept, keptWeight, keptSize);
        } else if (size == 3) {
            nearestOnTriangle(0, 1, 2);
            take(kept, keptWeight, keptSize);
        } else if (nearestOnTetrahedron()) {
            take(best, bestWeight, bestSize);
        } else {
            return false;
        }
        direct();
        return true;
    }

    private int keptSize;

    private void keep(int a, double wa) {
        kept[0] = a;
        keptWeight[0] = wa;
        keptSize = 1;
    }

    private void keep(int a, double wa, int b, double wb) {
        keep(a, wa);
        kept[1] = b;
        keptWeight[1] = wb;
        keptSize = 2;
    }

    private void nearestOnEdge(int a, int b) {
        double ax = diff[3 * a];
        double ay = diff[3 * a + 1];
        double az = diff[3 * a + 2];
        double ex = diff[3 * b] - ax;
        double ey = diff[3 * b + 1] - ay;
        double ez = diff[3 * b + 2] - az;
        double along = -(ax * ex + ay * ey + az * ez);
        double length2 = ex * ex + ey * ey + ez * ez;
        if (along <= 0) {
            keep(a, 1);
        } else if (along >= length2) {
            keep(b, 1);
        } else {
            keep(a, 1 - along / length2, b, along / length2);
        }
    }

    private void nearestOnTriangle(int a, int b, int c) {
        double ax = diff[3 * a];
        double ay = diff[3 * a + 1];
        double az = diff[3 * a + 2];
        double bx = diff[3 * b];
        double by = diff[3 * b + 1];
        double bz = diff[3 * b + 2];
        double cx = diff[3 * c];
        double cy = diff[3 * c + 1];
        double cz = diff[3 * c + 2];
        double abx = bx - ax;
        double aby = by - ay;
        double abz = bz - az;
        double acx = cx - ax;
        double acy = cy - ay;
        double acz = cz - az;
        double d1 = -(abx * ax + aby * ay + abz * az);
        double d2 = -(acx * ax + acy * ay + acz * az);
        if (d1 <= 0 && d2 <= 0) {
            keep(a, 1);
            return;
        }
        double d3 = -(abx * bx + aby * by + abz * bz);
        double d4 = -(acx * bx + acy * by + acz * bz);
        if (d3 >= 0 && d4 <= d3) {
            keep(b, 1);
            return;
        }
        double d5 = -(abx * cx + aby * cy + abz * cz);
        double d6 = -(acx * cx + acy * cy + acz * cz);
        if (d6 >= 0 && d5 <= d6) {
            keep(c, 1);
            return;
        }
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            nearestOnEdge(a, b);
            return;
        }
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            nearestOnEdge(a, c);
            return;
        }
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            nearestOnEdge(b, c);
            return;
        }
        double sum = va + vb + vc;
        keep(a, va / sum, b, vb / sum);
        kept[2] = c;
        keptWeight[2] = vc / sum;
        keptSize = 3;
    }

    /**
     * Tries each face at the newest corner that has the origin on its outer side; false if none has. The face opposite
     * to it was the simplex before, from which the origin lies on the new corner's side.
     */
    private boolean nearestOnTetrahedron() {
        best2 = Double.POSITIVE_INFINITY;
        tryFace(0, 1, 3, 2);
        tryFace(0, 2, 3, 1);
        tryFace(1, 2, 3, 0);
        return best2 < Double.POSITIVE_INFINITY;
    }

    private void tryFace(int a, int b, int c, int opposite) {
        double ax = diff[3 * a];
        double ay = diff[3 * a + 1];
        double az = diff[3 * a + 2];
        double abx = diff[3 * b] - ax;
        double aby = diff[3 * b + 1] - ay;
        double abz = diff[3 * b + 2] - az;
        double acx = diff[3 * c] - ax;
        double acy = diff[3 * c + 1] - ay;
        double acz = diff[3 * c + 2] - az;
        double nx = aby * acz - abz * acy;
        double ny = abz * acx - abx * acz;
        double nz = abx * acy - aby * acx;
        double origin = -(nx * ax + ny * ay + nz * az);
        double other = nx * (diff[3 * opposite] - ax)
                + ny * (diff[3 * opposite + 1] - ay)
                + nz * (diff[3 * opposite + 2] - az);
        if (origin * other > 0) {
            return;
        }
        nearestOnTriangle(a, b, c);
        double x = 0;
        double y = 0;
        double z = 0;
        for (int k = 0; k < keptSize; k++) {
            x += keptWeight[k] * diff[3 * kept[k]];
            y += keptWeight[k] * diff[3 * kept[k] + 1];
            z += keptWeight[k] * diff[3 * kept[k] + 2];
        }
        double d2 = x * x + y * y + z * z;
        if (d2 < best2) {
            best2 = d2;
            bestSize = keptSize;
            for (int k = 0; k < keptSize; k++) {
                best[k] = kept[k];
                bestWeight[k] = keptWeight[k];
            }
        }
    }

    /** Moves corners to the front. They are in ascending order, so nothing is overwritten before it is read. */
    private void take(int[] corners, double[] weights, int count) {
        for (int k = 0; k < count; k++) {
            int from = corners[k];
            weight[k] = weights[k];
            if (from != k) {
                move(from, k);
            }
        }
        size = count;
    }

    /** Copies a corner pair to another place. */
    private void move(int from, int to) {
        cornerA[to] = cornerA[from];
        cornerB[to] = cornerB[from];
        copy(diff, 3 * from, 3 * to);
        if (isRound) {
            copy(rimA, 3 * from, 3 * to);
            copy(rimB, 3 * from, 3 * to);
        }
    }

    private static void copy(double[] point, int from, int to) {
        point[to] = point[from];
        point[to + 1] = point[from + 1];
        point[to + 2] = point[from + 2];
    }

    /** Sets a corner pair by the difference of its points. */
    void set(int k, int i, int j, double x, double y, double z) {
        cornerA[k] = i;
        cornerB[k] = j;
        diff[3 * k] = x;
        diff[3 * k + 1] = y;
        diff[3 * k + 2] = z;
    }

    /** Moves a corner pair out to points on the rims: away from A's corner and away from B's. */
    void addRims(int k, RimPoint ofA, RimPoint ofB) {
        isRound = true;
        put(rimA, k, ofA.x, ofA.y, ofA.z);
        put(rimB, k, ofB.x, ofB.y, ofB.z);
        put(
                diff,
                k,
                diff[3 * k] + (ofA.x - ofB.x),
                diff[3 * k + 1] + (ofA.y - ofB.y),
                diff[3 * k + 2] + (ofA.z - ofB.z));
    }

    private static void put(double[] point, int k, double x, double y, double z) {
        point[3 * k] = x;
        point[3 * k + 1] = y;
        point[3 * k + 2] = z;
    }

    /** Whether an earlier corner is the same as this one. */
    boolean repeats(int w) {
        for (int k = 0; k < w; k++) {
            if (cornerA[k] == cornerA[w] && cornerB[k] == cornerB[w] && (!isRound || sameDifference(k, w))) {
                return true;
            }
        }
        return false;
    }

    private boolean sameDifference(int k, int w) {
        return diff[3 * k] == diff[3 * w] && diff[3 * k + 1] == diff[3 * w + 1] && diff[3 * k + 2] == diff[3 * w + 2];
    }

    /** The weighted sum of one coordinate of points on A or on B. */
    double weighted(double[] on, int axis) {
        double sum = 0;
        for (int k = 0; k < size; k++) {
            sum += weight[k] * on[3 * k + axis];
        }
        return sum;
    }

    /**
     * Takes what is left of the weighted sum along the simplex off the weights, by orthogonal axes within it. The
     * weights of a sliver come out of {@link #reduce} with few digits.
     */
    void refine() {
        for (int round = 0; round < 2 && size > 1 && size < 4; round++) {
            double rx = weighted(diff, 0);
            double ry = weighted(diff, 1);
            double rz = weighted(diff, 2);
            double ex = diff[3] - diff[0];
            double ey = diff[4] - diff[1];
            double ez = diff[5] - diff[2];
            double e2 = ex * ex + ey * ey + ez * ez;
            double second = 0;
            double shared = 0;
            if (size == 3) {
                double fx = diff[6] - diff[0];
                double fy = diff[7] - diff[1];
                double fz = diff[8] - diff[2];
                shared = (fx * ex + fy * ey + fz * ez) / e2;
                fx -= shared * ex;
                fy -= shared * ey;
                fz -= shared * ez;
                double rest = (fx * ex + fy * ey + fz * ez) / e2;
                fx -= rest * ex;
                fy -= rest * ey;
                fz -= rest * ez;
                second = -(rx * fx + ry * fy + rz * fz) / (fx * fx + fy * fy + fz * fz);
            }
            double first = -(rx * ex + ry * ey + rz * ez) / e2 - second * shared;
            double w1 = weight[1] + first;
            double w2 = size == 3 ? weight[2] + second : 0;
            double w0 = 1 - w1 - w2;
            if (!(w0 >= 0 && w1 >= 0 && w2 >= 0)) {
                return;
            }
            weight[0] = w0;
            weight[1] = w1;
            weight[2] = w2;
        }
    }

    /** The length of the weighted sum of the corners: the distance of two true points of A and B. */
    double reached() {
        double x = weighted(diff, 0);
        double y = weighted(diff, 1);
        double z = weighted(diff, 2);
        double reached = Math.sqrt(x * x + y * y + z * z);
        double along = (vx * x + vy * y + vz * z) / Math.sqrt(vx * vx + vy * vy + vz * vz);
        // A sliver of a triangle, as on a rim, has no normal worth the name; far from contact the sum is better.
        if (!(reached - along <= SLIVER * reached) && reached > FAR) {
            vx = x;
            vy = y;
            vz = z;
        }
        return reached;
    }

    private void direct() {
        double ax = diff[0];
        double ay = diff[1];
        double az = diff[2];
        if (size == 1) {
            vx = ax;
            vy = ay;
            vz = az;
            return;
        }
        double ex = diff[3] - ax;
        double ey = diff[4] - ay;
        double ez = diff[5] - az;
        if (size == 2) {
            // e × (a × e) / e²
            double cx = ay * ez - az * ey;
            double cy = az * ex - ax * ez;
            double cz = ax * ey - ay * ex;
            double length2 = ex * ex + ey * ey + ez * ez;
            vx = (ey * cz - ez * cy) / length2;
            vy = (ez * cx - ex * cz) / length2;
            vz = (ex * cy - ey * cx) / length2;
            return;
        }
        double fx = diff[6] - ax;
        double fy = diff[7] - ay;
        double fz = diff[8] - az;
        double nx = ey * fz - ez * fy;
        double ny = ez * fx - ex * fz;
        double nz = ex * fy - ey * fx;
        double scale = (nx * ax + ny * ay + nz * az) / (nx * nx + ny * ny + nz * nz);
        vx = nx * scale;
        vy = ny * scale;
        vz = nz * scale;
    }
}
