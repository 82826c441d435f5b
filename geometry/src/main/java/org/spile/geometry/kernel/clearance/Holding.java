package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Side;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Whether one thing stands within another, told from one point of each connected part.
 *
 * <p>That is enough where no surface cuts the part: then it lies on one side of it. A point inside at a distance r from
 * the surface can't get out by a shift shorter than r.
 *
 * @param depthMm no shift shorter than this gets what is held out; 0 if nothing is found within
 * @param known whether all points could be told
 */
record Holding(double depthMm, boolean known) {
    private static final int MOST_POINTS = 64;

    /** Nothing is held. */
    static final Holding NONE = new Holding(0, true);

    /** A shifted mesh, whose surface doesn't cut into the solid, may hold each of the solid's cores. */
    static Holding of(Mesh mesh, Vector3D shift, Solid solid) {
        Holding all = NONE;
        for (ConvexCore core : solid.cores()) {
            Vector3D centre =
                    Vector3D.of(core.centreX(), core.centreY(), core.centreZ()).subtract(shift);
            all = all.and(point(mesh, centre, core.roundMm()));
        }
        return all.known() || sticksIn(mesh.bounds(), shift, solid.bounds()) ? all : new Holding(all.depthMm, true);
    }

    /** Two meshes, the first one shifted, whose surfaces stand clear of each other: shells of one within the other. */
    static Holding of(Mesh a, Vector3D shift, Mesh b) {
        return shells(a, shift, b).and(shells(b, shift.negate(), a));
    }

    private static Holding shells(Mesh held, Vector3D shift, Mesh holder) {
        Holding all = NONE;
        for (int i = 0; i < held.shells(); i++) {
            all = all.and(point(holder, held.corner(held.shellFirst(i), 0).add(shift), 0));
        }
        return all.depthMm > 0 ? all.and(deepest(held, shift, holder)) : all;
    }

    /** The deepest of some corners of a mesh, evenly spread over its triangles. */
    private static Holding deepest(Mesh held, Vector3D shift, Mesh holder) {
        Holding deepest = NONE;
        int step = held.count() / MOST_POINTS + 1;
        for (int t = 0; t < held.count(); t += step) {
            deepest = deepest.and(point(holder, held.corner(t, t % 3).add(shift), 0));
        }
        return deepest;
    }

    private static Holding point(Mesh mesh, Vector3D point, double roundMm) {
        if (!isWithin(mesh.bounds(), point)) {
            return NONE;
        }
        if (!mesh.isClosed()) {
            return new Holding(0, false);
        }
        double off = mesh.surfaceMm(point);
        boolean inside = mesh.side(point) == Side.INSIDE;
        if (off <= GeometryTolerance.ARITHMETIC_MM) {
            return new Holding(0, false);
        }
        return inside ? new Holding(off + roundMm, true) : NONE;
    }

    /**
     * What a triangle of one mesh that touches another shows of a space they share: its middle may lie in the other, and
     * a ball just below its middle may lie in both, which only a shift of the ball's width takes out of itself.
     */
    static Holding at(Mesh mesh, int triangle, Mesh other) {
        Vector3D a = mesh.corner(triangle, 0);
        Vector3D b = mesh.corner(triangle, 1);
        Vector3D c = mesh.corner(triangle, 2);
        Vector3D middle = a.add(b).add(c).multiply(1.0 / 3);
        Vector3D normal = b.subtract(a).cross(c.subtract(a)).normalize();
        Vector3D below = middle.subtract(normal.multiply(middle.distance(a) / 8));
        double ball = Math.min(point(mesh, below, 0).depthMm, point(other, below, 0).depthMm);
        return new Holding(Math.max(point(other, middle, 0).depthMm, 2 * ball), true);
    }

    /** The upper bound of a signed distance, given another one. */
    double upper(double otherMm) {
        return depthMm > 0 ? Math.min(otherMm, -depthMm) : otherMm;
    }

    /** What is still held for sure after the parts have been shifted by this much. */
    Holding lessened(double byMm) {
        return new Holding(Math.max(0, depthMm - byMm), known);
    }

    Holding and(Holding other) {
        return new Holding(Math.max(depthMm, other.depthMm), known && other.known);
    }

    private static boolean isWithin(Box3 box, Vector3D p) {
        return p.getX() >= box.minX()
                && p.getX() <= box.maxX()
                && p.getY() >= box.minY()
                && p.getY() <= box.maxY()
                && p.getZ() >= box.minZ()
                && p.getZ() <= box.maxZ();
    }

    /** Whether a box lies wholly in a shifted one; a solid that looks out of a mesh's bounds isn't held by it. */
    private static boolean sticksIn(Box3 box, Vector3D shift, Box3 inner) {
        double slack = GeometryTolerance.CONTACT_MM;
        return inner.minX() >= box.minX() + shift.getX() - slack
                && inner.minY() >= box.minY() + shift.getY() - slack
                && inner.minZ() >= box.minZ() + shift.getZ() - slack
                && inner.maxX() <= box.maxX() + shift.getX() + slack
                && inner.maxY() <= box.maxY() + shift.getY() + slack
                && inner.maxZ() <= box.maxZ() + shift.getZ() + slack;
    }
}
