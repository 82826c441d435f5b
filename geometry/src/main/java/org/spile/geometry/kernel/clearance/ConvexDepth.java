package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The greatest separation of two convex cores over the {@link DecidingAxes}: one object per thread.
 *
 * <p>For cores without discs that overlap it is their depth, with a minus: the shift that separates along n is
 * h_A(n) + h_B(−n), not the length of the common range, and differs from that along −n. For cores that are apart, and
 * for discs, it is a lower bound of the signed distance. Rounding radii are left out.
 */
final class ConvexDepth implements AxisVisitor {
    private final DecidingAxes axes = new DecidingAxes();

    /** Greatest separation found; negative is a depth. */
    double separation;
    /** Unit direction from A to B of that separation. */
    double nx;

    double ny;
    double nz;

    /** Measures A, shifted, against B. */
    void measure(ConvexCore a, double dx, double dy, double dz, ConvexCore b) {
        separation = Double.NEGATIVE_INFINITY;
        axes.visit(a, dx, dy, dz, b, this);
    }

    /** Takes a deeper look's answer. */
    void take(double better, double x, double y, double z) {
        separation = better;
        nx = x;
        ny = y;
        nz = z;
    }

    @Override
    public void axis(double x, double y, double z, double bAhead, double bBehind) {
        if (bAhead > separation) {
            separation = bAhead;
            nx = x;
            ny = y;
            nz = z;
        }
        if (bBehind > separation) {
            separation = bBehind;
            nx = -x;
            ny = -y;
            nz = -z;
        }
    }
}
