package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/** The point of a body that lies farthest along a way (mm); where a whole face does, its corner that comes first. */
final class Farthest {
    private Farthest() {}

    static Vector3D of(Body body, Vector3D way) {
        double x = way.getX();
        double y = way.getY();
        double z = way.getZ();
        Vector3D farthest = null;
        double reach = Double.NEGATIVE_INFINITY;
        for (Solid solid : body.solids()) {
            for (ConvexCore core : solid.cores()) {
                double out = core.reach(x, y, z) + core.roundMm();
                if (out > reach) {
                    int corner = core.extreme(x, y, z);
                    Vector3D at = Vector3D.of(core.x(corner), core.y(corner), core.z(corner));
                    farthest = at.add(way.multiply(out - at.dot(way)));
                    reach = out;
                }
            }
        }
        return farthest;
    }
}
