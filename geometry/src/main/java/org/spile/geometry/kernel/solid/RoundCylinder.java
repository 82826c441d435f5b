package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * A straight bar with flat ends in any direction, whose section is round, flat oval or has rounded corners.
 *
 * <p>It is kept exactly as the hull of a few corners ⊕ a disc square to the axis, never as a polygon. Lengths in mm.
 * Immutable.
 */
public final class RoundCylinder implements Solid {
    private final List<Vector3D> corners;
    private final Vector3D.Unit axis;
    private final double radiusMm;
    private final double roundMm;
    private final ConvexCore core;
    private final Box3 bounds;

    private RoundCylinder(List<Vector3D> corners, Vector3D.Unit axis, double radiusMm, double roundMm) {
        this.corners = List.copyOf(corners);
        this.axis = axis;
        this.radiusMm = GeometryTolerance.notNegative("radius", radiusMm);
        this.roundMm = GeometryTolerance.notNegative("rounding", roundMm);
        if (radiusMm <= GeometryTolerance.CONTACT_MM) {
            throw new IllegalArgumentException("a round cylinder of radius " + radiusMm + " mm has no section");
        }
        int ring = corners.size() / 2;
        List<Vector3D> normals = new ArrayList<>(List.of(axis));
        List<Vector3D> edges = new ArrayList<>(List.of(axis));
        for (int i = 0; ring > 1 && i < ring; i++) {
            Vector3D side = corners.get((i + 1) % ring).subtract(corners.get(i));
            edges.add(side);
            normals.add(side.cross(axis));
        }
        this.core = ConvexCore.withDisc(this.corners, normals, edges, axis, radiusMm, roundMm);
        this.bounds = new Box3(
                -reach(-1, 0, 0), -reach(0, -1, 0), -reach(0, 0, -1), reach(1, 0, 0), reach(0, 1, 0), reach(0, 0, 1));
    }

    private double reach(double dx, double dy, double dz) {
        return core.reach(dx, dy, dz) + roundMm;
    }

    /**
     * A round cylinder.
     *
     * @param from middle of one end in mm
     * @param to middle of the other end in mm
     * @param radiusMm radius
     * @return the cylinder
     * @throws IllegalArgumentException if it has no radius or no length
     */
    public static RoundCylinder of(Vector3D from, Vector3D to, double radiusMm) {
        return new RoundCylinder(List.of(from, to), direction(from, to), radiusMm, 0);
    }

    /**
     * A flat oval bar: two half circles and two flats.
     *
     * @param from middle of one end in mm
     * @param to middle of the other end in mm
     * @param halfFlat half of the flat, as a vector square to the axis, in mm
     * @param radiusMm radius of the half circles, half the minor size
     * @return the bar; a round cylinder if the flat has no length
     * @throws IllegalArgumentException if it has no radius or length, or the flat is not square to the axis
     */
    public static RoundCylinder flatOval(Vector3D from, Vector3D to, Vector3D halfFlat, double radiusMm) {
        Vector3D.Unit axis = direction(from, to);
        if (halfFlat.norm() <= GeometryTolerance.CONTACT_MM) {
            return of(from, to, radiusMm);
        }
        if (Math.abs(halfFlat.normalize().dot(axis)) > 1e-9) {
            throw new IllegalArgumentException("the flat " + halfFlat + " mm is not square to the axis " + axis);
        }
        List<Vector3D> corners =
                List.of(from.subtract(halfFlat), from.add(halfFlat), to.subtract(halfFlat), to.add(halfFlat));
        return new RoundCylinder(corners, axis, radiusMm, 0);
    }

    /** The same solid as a convex upright prism with a plan radius. */
    static RoundCylinder upright(Prism prism) {
        Footprint plan = prism.footprint();
        List<Vector3D> corners = Prism.corners(plan, prism.bottomMm(), prism.topMm());
        return new RoundCylinder(corners, Vector3D.Unit.PLUS_Z, plan.radiusMm(), prism.roundMm());
    }

    private static Vector3D.Unit direction(Vector3D from, Vector3D to) {
        if (!(from.distance(to) > GeometryTolerance.CONTACT_MM)) {
            throw new IllegalArgumentException("a round cylinder from " + from + " to " + to + " mm has no length");
        }
        return to.subtract(from).normalize();
    }

    /**
     * The corners of the core: those of one end, then those of the other.
     *
     * @return points in mm
     */
    public List<Vector3D> corners() {
        return corners;
    }

    /**
     * The direction from one end to the other.
     *
     * @return unit vector
     */
    public Vector3D.Unit axis() {
        return axis;
    }

    /**
     * The radius of the section's round parts.
     *
     * @return mm
     */
    public double radiusMm() {
        return radiusMm;
    }

    @Override
    public Box3 bounds() {
        return bounds;
    }

    @Override
    public double roundMm() {
        return roundMm;
    }

    @Override
    public RoundCylinder rounded(double growthMm) {
        return new RoundCylinder(corners, axis, radiusMm, roundMm + GeometryTolerance.notNegative("growth", growthMm));
    }

    @Override
    public RoundCylinder grownSquare(double growthMm) {
        double growth = GeometryTolerance.notNegative("growth", growthMm);
        List<Vector3D> moved = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double along = i < corners.size() / 2 ? -growth : growth;
            moved.add(corners.get(i).add(axis.multiply(along)));
        }
        return new RoundCylinder(moved, axis, radiusMm + growth, roundMm);
    }

    @Override
    public boolean isConvex() {
        return true;
    }

    @Override
    public List<ConvexCore> cores() {
        return List.of(core);
    }

    @Override
    public RoundCylinder moved(Move move) {
        return new RoundCylinder(
                corners.stream().map(move::apply).toList(),
                move.applyDirection(axis).normalize(),
                radiusMm,
                roundMm);
    }

    @Override
    public String toString() {
        return "RoundCylinder[" + corners + ", radius " + radiusMm + " mm, rounded " + roundMm + " mm]";
    }
}
