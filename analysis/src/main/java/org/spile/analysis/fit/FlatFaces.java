package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.clearance.Clearance;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Where else two bodies are as near as where they are nearest: flat faces that face each other are so all over, and the
 * readings that place them may give more at one end than at the other.
 */
final class FlatFaces {
    /** A grain to feel with whether a point lies on a body. */
    private static final double GRAIN_MM = 0.001;

    private FlatFaces() {}

    /**
     * The corners of either face that have the other face straight across.
     *
     * @param one a body, or the sheet of a face
     * @param other the other body
     * @param across from a point of the one to the point of the other it faces
     * @param normal square to the faces, from the one to the other
     */
    static List<Ends> corners(Body one, Body other, Vector3D across, Vector3D normal) {
        List<Ends> ends = new ArrayList<>();
        for (Vector3D corner : foremost(one, normal)) {
            if (touches(corner.add(across), other)) {
                ends.add(new Ends(corner, corner.add(across)));
            }
        }
        for (Vector3D corner : foremost(other, normal.negate())) {
            if (touches(corner.subtract(across), one)) {
                ends.add(new Ends(corner.subtract(across), corner));
            }
        }
        return ends;
    }

    private static List<Vector3D> foremost(Body body, Vector3D direction) {
        double reach = UnitFrame.reach(body, direction);
        List<Vector3D> corners = new ArrayList<>();
        for (Solid solid : body.solids()) {
            for (ConvexCore core : solid.cores()) {
                boolean sharp = core.discMm() == 0 && core.roundMm() == 0;
                for (int i = 0; sharp && i < core.count(); i++) {
                    Vector3D corner = Vector3D.of(core.x(i), core.y(i), core.z(i));
                    if (corner.dot(direction) >= reach - GeometryTolerance.CONTACT_MM) {
                        corners.add(corner);
                    }
                }
            }
        }
        return corners;
    }

    private static boolean touches(Vector3D point, Body body) {
        Prism grain = Prism.box(
                point.getX() - GRAIN_MM,
                point.getY() - GRAIN_MM,
                point.getZ() - GRAIN_MM,
                point.getX() + GRAIN_MM,
                point.getY() + GRAIN_MM,
                point.getZ() + GRAIN_MM);
        return body.bounds().grown(GRAIN_MM).gapTo(grain.bounds()) == 0
                && Clearance.between(Body.of(grain), body).lowerMm() <= GRAIN_MM;
    }
}
