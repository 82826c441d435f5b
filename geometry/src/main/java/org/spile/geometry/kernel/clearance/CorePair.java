package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The signed distance of two convex cores with their rounding radii: apart by {@link ConvexDistance}, touching or
 * overlapping by {@link ConvexDepth}. Radii come off at the end, which is exact for convex cores.
 */
final class CorePair {
    final ConvexDistance distance = new ConvexDistance();
    final ConvexDepth depth = new ConvexDepth();
    private final CurvedDepth curved = new CurvedDepth();

    private ConvexCore a;
    private ConvexCore b;
    private double shiftX;
    private double shiftY;
    private double shiftZ;
    private boolean apart;

    double lower;
    double upper;
    double nx;
    double ny;
    double nz;

    void measure(ConvexCore first, ConvexCore second) {
        measure(first, 0, 0, 0, second);
    }

    /** Measures A, shifted, against B. */
    void measure(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        place(first, dx, dy, dz, second);
        distance.measure(first, dx, dy, dz, second);
        measureCore();
    }

    /** Measures a pair that has moved a little since it was last measured here. */
    void measureAgain(ConvexCore first, ConvexCore second) {
        place(first, 0, 0, 0, second);
        distance.measureAgain(first, 0, 0, 0, second);
        if (!(distance.lower <= distance.upper)) {
            // The corners that were nearest may have come to lie on one line: no number then, and a fresh start.
            distance.measure(first, 0, 0, 0, second);
        }
        measureCore();
    }

    private void place(ConvexCore first, double dx, double dy, double dz, ConvexCore second) {
        a = first;
        b = second;
        shiftX = dx;
        shiftY = dy;
        shiftZ = dz;
    }

    private void measureCore() {
        measureSharp();
        lower -= a.roundMm() + b.roundMm();
        upper -= a.roundMm() + b.roundMm();
    }

    private void measureSharp() {
        apart = !distance.overlap && distance.upper > GeometryTolerance.ARITHMETIC_MM;
        if (apart) {
            lower = Math.min(distance.lower, distance.upper);
            upper = distance.upper;
            nx = distance.nx;
            ny = distance.ny;
            nz = distance.nz;
            if (upper - lower <= GeometryTolerance.ARITHMETIC_MM) {
                return;
            }
        }
        depth.measure(a, shiftX, shiftY, shiftZ, b);
        boolean round = a.discMm() > 0 || b.discMm() > 0;
        if (apart) {
            tightenLower();
        } else if (round) {
            curved.measure(a, shiftX, shiftY, shiftZ, b, depth);
            depth.take(-curved.depthMm, curved.nx, curved.ny, curved.nz);
            lower = depth.separation;
            upper = Math.max(lower, -curved.leastMm);
            direct();
        } else {
            lower = depth.separation;
            upper = depth.separation;
            direct();
        }
    }

    /** Near parallel faces the search may stall; then the best separating direction still bounds from below. */
    private void tightenLower() {
        if (depth.separation > lower) {
            lower = Math.min(upper, depth.separation);
            direct();
        }
    }

    private void direct() {
        nx = depth.nx;
        ny = depth.ny;
        nz = depth.nz;
    }

    Gap gap(double lowerMm, double upperMm) {
        Witness found = new Witness();
        locate(found);
        return found.gap(lowerMm, upperMm);
    }

    void locate(Witness found) {
        found.direction(nx, ny, nz);
        double back = 0;
        if (!apart) {
            // Shifted until they are just apart, the nearest places are the witnesses.
            back = depth.separation - GeometryTolerance.CONTACT_MM / 10;
            distance.measure(a, shiftX + back * nx, shiftY + back * ny, shiftZ + back * nz, b);
        }
        found.onA(distance.witnessA(0) - back * nx, distance.witnessA(1) - back * ny, distance.witnessA(2) - back * nz);
        found.onB(distance.witnessB(0), distance.witnessB(1), distance.witnessB(2));
        if (apart && distance.upper > GeometryTolerance.CONTACT_MM) {
            // The radii along the line of the witnesses, so that they stay one distance apart to the last digit.
            double x = found.bx - found.ax;
            double y = found.by - found.ay;
            double z = found.bz - found.az;
            double length = Math.sqrt(x * x + y * y + z * z);
            found.outward(x / length, y / length, z / length, a.roundMm(), b.roundMm());
        } else {
            found.outward(nx, ny, nz, a.roundMm(), b.roundMm());
        }
    }
}
