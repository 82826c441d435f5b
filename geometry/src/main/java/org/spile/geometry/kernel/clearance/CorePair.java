package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
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
        a = first;
        b = second;
        shiftX = dx;
        shiftY = dy;
        shiftZ = dz;
        distance.measure(first, dx, dy, dz, second);
        measureCore();
        lower -= a.roundMm() + b.roundMm();
        upper -= a.roundMm() + b.roundMm();
    }

    private void measureCore() {
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
        Vector3D direction = Vector3D.of(nx, ny, nz);
        Vector3D outward = direction;
        Vector3D onA;
        Vector3D onB;
        if (apart) {
            onA = Vector3D.of(distance.witnessA(0), distance.witnessA(1), distance.witnessA(2));
            onB = Vector3D.of(distance.witnessB(0), distance.witnessB(1), distance.witnessB(2));
            if (distance.upper > GeometryTolerance.CONTACT_MM) {
                // The radii along the line of the witnesses, so that they stay one distance apart to the last digit.
                outward = onB.subtract(onA).normalize();
            }
        } else {
            // Shifted until they are just apart, the nearest places are the witnesses.
            double back = depth.separation - GeometryTolerance.CONTACT_MM / 10;
            distance.measure(a, shiftX + back * nx, shiftY + back * ny, shiftZ + back * nz, b);
            Vector3D touchA = Vector3D.of(distance.witnessA(0), distance.witnessA(1), distance.witnessA(2));
            onA = touchA.subtract(direction.multiply(back));
            onB = Vector3D.of(distance.witnessB(0), distance.witnessB(1), distance.witnessB(2));
        }
        return new Gap(
                lowerMm,
                upperMm,
                onA.add(outward.multiply(a.roundMm())),
                onB.subtract(outward.multiply(b.roundMm())),
                direction,
                0,
                0);
    }
}
