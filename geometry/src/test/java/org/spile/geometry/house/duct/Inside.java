package org.spile.geometry.house.duct;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** How far a point lies outside a body, from the faces themselves: exact inside and nought at the surface, a bound beyond. */
public final class Inside {
    private Inside() {}

    /** Less than nothing inside (mm). */
    public static double outsideMm(Body body, Vector3D point) {
        return body.solids().stream()
                .mapToDouble(solid -> outsideMm(solid, point))
                .min()
                .orElseThrow();
    }

    private static double outsideMm(Solid solid, Vector3D point) {
        if (solid instanceof ConvexPolyhedron hull) {
            double most = Double.NEGATIVE_INFINITY;
            for (int face = 0; face < hull.faces().size(); face++) {
                Vector3D corner = hull.vertices().get(hull.faces().get(face).get(0));
                most = Math.max(most, hull.normal(face).dot(point.subtract(corner)));
            }
            return most;
        }
        if (solid instanceof RoundCylinder bar) {
            double along = bar.axis().dot(point.subtract(bar.corners().get(0)));
            double length =
                    bar.axis().dot(bar.corners().get(1).subtract(bar.corners().get(0)));
            Vector3D foot = bar.corners().get(0).add(bar.axis().multiply(along));
            return Math.max(Math.max(-along, along - length), foot.distance(point) - bar.radiusMm());
        }
        var box = solid.bounds();
        double radius = solid instanceof Prism prism ? prism.footprint().radiusMm() : 0;
        double x = Math.max(box.minX() - point.getX(), point.getX() - box.maxX());
        double y = Math.max(box.minY() - point.getY(), point.getY() - box.maxY());
        double z = Math.max(box.minZ() - point.getZ(), point.getZ() - box.maxZ());
        if (radius > 0) {
            // An upright pipe: its bounds are square in plan.
            return Math.max(Math.hypot(x + radius, y + radius) - radius, z);
        }
        return Math.max(Math.max(x, y), z);
    }
}
