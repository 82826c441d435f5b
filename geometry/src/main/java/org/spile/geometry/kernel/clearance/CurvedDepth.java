package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * An upper bound of the signed distance of overlapping cores of which at least one has a disc.
 *
 * <p>Each disc is replaced by an inscribed polygon, so the cores shrink and their exact depth can only fall. One corner
 * of the polygon looks along the direction found for the true cores, so that there nothing is lost.
 */
final class CurvedDepth {
    private static final int SIDES = 64;

    private final ConvexDepth depth = new ConvexDepth();

    CurvedDepth(ConvexCore a, ConvexCore b, double dx, double dy, double dz, ConvexDepth found) {
        Vector3D direction = Vector3D.of(found.nx, found.ny, found.nz);
        depth.measure(inscribed(a, direction), dx, dy, dz, inscribed(b, direction.negate()));
    }

    double upperMm() {
        return depth.separation;
    }

    private static ConvexCore inscribed(ConvexCore core, Vector3D towards) {
        if (core.discMm() == 0) {
            return core;
        }
        Vector3D axis = core.axis();
        Vector3D across = towards.subtract(axis.multiply(towards.dot(axis)));
        Vector3D first = across.norm() > 1e-9 ? across.normalize() : axis.orthogonal();
        Vector3D second = axis.cross(first);
        List<Vector3D> rim = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            double angle = 2 * Math.PI * i / SIDES;
            rim.add(first.multiply(StrictMath.cos(angle) * core.discMm())
                    .add(second.multiply(StrictMath.sin(angle) * core.discMm())));
        }
        return core.withRim(rim);
    }
}
