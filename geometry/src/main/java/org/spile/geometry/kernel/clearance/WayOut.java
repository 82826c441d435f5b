package org.spile.geometry.kernel.clearance;

import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The shortest shift of B known to end an overlap with A.
 *
 * <p>Past each other's reach along any direction n two things are apart, whatever their shape: a shift of h_A(n) +
 * h_B(−n) along n ends any overlap. Directions along the axes are always tried; others are offered.
 */
final class WayOut {
    private final ToDoubleFunction<Vector3D> reachA;
    private final ToDoubleFunction<Vector3D> reachB;
    double lengthMm = Double.POSITIVE_INFINITY;
    Vector3D direction = Vector3D.Unit.PLUS_X;

    private WayOut(ToDoubleFunction<Vector3D> reachA, ToDoubleFunction<Vector3D> reachB) {
        this.reachA = reachA;
        this.reachB = reachB;
        offer(Vector3D.Unit.PLUS_X);
        offer(Vector3D.Unit.PLUS_Y);
        offer(Vector3D.Unit.PLUS_Z);
    }

    /** Out of a mesh, also square to the solid's faces. */
    static WayOut of(Mesh a, Solid b) {
        WayOut way = new WayOut(a::reachMm, n -> reach(b, n));
        for (ConvexCore core : b.cores()) {
            for (int i = 0; i < core.normalCount(); i++) {
                way.offer(Vector3D.of(core.normal(i, 0), core.normal(i, 1), core.normal(i, 2)));
            }
        }
        return way;
    }

    static WayOut of(Mesh a, Mesh b) {
        return new WayOut(a::reachMm, b::reachMm);
    }

    private static double reach(Solid solid, Vector3D n) {
        double far = Double.NEGATIVE_INFINITY;
        for (ConvexCore core : solid.cores()) {
            far = Math.max(far, core.reach(n.getX(), n.getY(), n.getZ()));
        }
        return far + solid.roundMm();
    }

    /** Tries a direction both ways. */
    void offer(Vector3D n) {
        take(reachA.applyAsDouble(n) + reachB.applyAsDouble(n.negate()), n);
        take(reachA.applyAsDouble(n.negate()) + reachB.applyAsDouble(n), n.negate());
    }

    /** Whether a plane parts the two as they stand, so that neither is within the other. */
    boolean isApart() {
        return lengthMm <= 0;
    }

    /** Takes a shift that has been found to end the overlap, if it is shorter. */
    void take(double mm, Vector3D along) {
        if (mm < lengthMm) {
            lengthMm = mm;
            direction = along;
        }
    }
}
