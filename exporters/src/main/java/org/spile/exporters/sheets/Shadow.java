package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.clearance.Cut;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** What a body covers, seen from straight above. */
final class Shadow {
    /** Faces that stand upright cast no shadow of their own (mm2). */
    private static final double NO_AREA_MM2 = 1e-6;

    /** Sides of the polygon that stands for a round rim: at a radius of 100 it is 0.2 too large. */
    private static final int RIM = 48;

    private Shadow() {}

    /** The plan outlines of a body, its pieces joined. */
    static List<Outline> of(Body body) {
        List<Outline> all = new ArrayList<>();
        body.solids().forEach(solid -> all.addAll(of(solid)));
        return Regions.union(all);
    }

    private static List<Outline> of(Solid solid) {
        if (solid instanceof ConvexPolyhedron polyhedron) {
            return faces(polyhedron);
        }
        if (solid instanceof Prism prism) {
            return Cut.horizontal(prism, (prism.bottomMm() + prism.topMm()) / 2);
        }
        return faces(facetted((RoundCylinder) solid));
    }

    /** The hull of many-sided rims drawn round the round ones, so that nothing is shown too small. */
    private static ConvexPolyhedron facetted(RoundCylinder round) {
        Vector3D axis = round.axis();
        Vector3D u = axis.orthogonal();
        Vector3D v = axis.cross(u);
        double radius = round.radiusMm() / Math.cos(Math.PI / RIM);
        List<Vector3D> rim = new ArrayList<>();
        for (Vector3D corner : round.corners()) {
            for (int i = 0; i < RIM; i++) {
                double angle = 2 * Math.PI * i / RIM;
                rim.add(corner.add(u.multiply(radius * StrictMath.cos(angle)))
                        .add(v.multiply(radius * StrictMath.sin(angle))));
            }
        }
        return ConvexPolyhedron.hull(rim);
    }

    private static List<Outline> faces(ConvexPolyhedron polyhedron) {
        List<Outline> faces = new ArrayList<>();
        for (List<Integer> face : polyhedron.faces()) {
            List<Vector2D> corners = face.stream()
                    .map(index -> polyhedron.vertices().get(index))
                    .map(Shadow::plan)
                    .toList();
            if (area(corners) > NO_AREA_MM2) {
                faces.add(Outline.of(corners));
            }
        }
        return faces;
    }

    private static Vector2D plan(Vector3D point) {
        return Vector2D.of(point.getX(), point.getY());
    }

    private static double area(List<Vector2D> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vector2D a = corners.get(i);
            Vector2D b = corners.get((i + 1) % corners.size());
            twice += a.getX() * b.getY() - b.getX() * a.getY();
        }
        return Math.max(0, twice / 2);
    }
}
