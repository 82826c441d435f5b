package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/** The lowest point of a body (site frame, mm); where a whole face is lowest, its corner that comes first. */
final class Lowest {
    private Lowest() {}

    static Vector3D of(Body body) {
        Vector3D lowest = null;
        for (Solid solid : body.solids()) {
            for (ConvexCore core : solid.cores()) {
                int corner = core.extreme(0, 0, -1);
                double z = -core.reach(0, 0, -1) - core.roundMm();
                if (lowest == null || z < lowest.getZ()) {
                    lowest = Vector3D.of(core.x(corner), core.y(corner), z);
                }
            }
        }
        return lowest;
    }
}
