package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * A house part with straight sides, twice: as the kernel holds it, and as a polyhedron for plain computation.
 *
 * @param solid what is measured
 * @param plain the same body by its corners
 */
record Twin(Solid solid, ConvexPolyhedron plain) {
    /** A box about its own middle, turned and shifted; it stays an upright prism if the turn is about the vertical. */
    static Twin box(double lengthMm, double widthMm, double heightMm, Move place) {
        double x = lengthMm / 2;
        double y = widthMm / 2;
        double z = heightMm / 2;
        Prism prism = Prism.box(-x, -y, -z, x, y, z);
        return new Twin(prism.moved(place), polyhedron(x, y, z).moved(place));
    }

    private static ConvexPolyhedron polyhedron(double x, double y, double z) {
        List<Vector3D> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(Vector3D.of((i & 1) == 0 ? -x : x, (i & 2) == 0 ? -y : y, (i & 4) == 0 ? -z : z));
        }
        return ConvexPolyhedron.hull(corners);
    }
}
