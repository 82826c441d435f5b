package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Outline;

/**
 * An upright prism: a plan shape from a bottom height to a top height.
 *
 * <p>The plan shape may be any outline with holes, a disc or a slot; its ends are flat. A rounding radius, if any,
 * grows the whole. Lengths in mm. Immutable.
 */
public final class Prism implements Solid {
    private final Footprint footprint;
    private final double bottomMm;
    private final double topMm;
    private final double roundMm;
    private final Box3 bounds;
    private final List<ConvexCore> cores;

    private Prism(Footprint footprint, double bottomMm, double topMm, double roundMm) {
        this.footprint = footprint;
        this.bottomMm = GeometryTolerance.inRange("bottom", bottomMm);
        this.topMm = GeometryTolerance.inRange("top", topMm);
        this.roundMm = GeometryTolerance.notNegative("rounding", roundMm);
        if (!(topMm - bottomMm > GeometryTolerance.CONTACT_MM)) {
            throw new IllegalArgumentException("a prism from " + bottomMm + " up to " + topMm + " mm has no height");
        }
        this.bounds = new Box3(footprint.minX(), footprint.minY(), bottomMm, footprint.maxX(), footprint.maxY(), topMm)
                .grown(roundMm);
        this.cores = footprint.convexParts().stream().map(this::core).toList();
    }

    /**
     * An axis-parallel box.
     *
     * @param minX least x in mm
     * @param minY least y in mm
     * @param minZ bottom in mm
     * @param maxX greatest x in mm
     * @param maxY greatest y in mm
     * @param maxZ top in mm
     * @return the box
     * @throws IllegalArgumentException if a side is not longer than the contact tolerance
     */
    public static Prism box(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
        return of(Outline.rectangle(minX, minY, maxX, maxY), minZ, maxZ);
    }

    /**
     * A prism on an outline.
     *
     * @param outline the plan shape
     * @param bottomMm height of the bottom
     * @param topMm height of the top
     * @return the prism
     * @throws IllegalArgumentException if the top is not above the bottom by more than the contact tolerance
     */
    public static Prism of(Outline outline, double bottomMm, double topMm) {
        return of(Footprint.of(outline), bottomMm, topMm);
    }

    /**
     * A prism on any plan shape.
     *
     * @param footprint the plan shape
     * @param bottomMm height of the bottom
     * @param topMm height of the top
     * @return the prism
     * @throws IllegalArgumentException if the top is not above the bottom by more than the contact tolerance
     */
    public static Prism of(Footprint footprint, double bottomMm, double topMm) {
        return new Prism(footprint, bottomMm, topMm, 0);
    }

    /**
     * An upright round cylinder.
     *
     * @param centreX axis in mm
     * @param centreY axis in mm
     * @param radiusMm radius
     * @param bottomMm height of the bottom
     * @param topMm height of the top
     * @return the cylinder
     * @throws IllegalArgumentException if it has no radius or no height
     */
    public static Prism round(double centreX, double centreY, double radiusMm, double bottomMm, double topMm) {
        return of(Footprint.disc(centreX, centreY, radiusMm), bottomMm, topMm);
    }

    /**
     * The plan shape, rounding left out.
     *
     * @return the footprint
     */
    public Footprint footprint() {
        return footprint;
    }

    /**
     * The height of the bottom, rounding left out.
     *
     * @return mm
     */
    public double bottomMm() {
        return bottomMm;
    }

    /**
     * The height of the top, rounding left out.
     *
     * @return mm
     */
    public double topMm() {
        return topMm;
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
    public Prism rounded(double growthMm) {
        return new Prism(footprint, bottomMm, topMm, roundMm + GeometryTolerance.notNegative("growth", growthMm));
    }

    @Override
    public Prism grownSquare(double growthMm) {
        double growth = GeometryTolerance.notNegative("growth", growthMm);
        return new Prism(footprint.grownSquare(growth), bottomMm - growth, topMm + growth, roundMm);
    }

    @Override
    public boolean isConvex() {
        return footprint.isConvex();
    }

    @Override
    public List<ConvexCore> cores() {
        return cores;
    }

    /**
     * The convex prisms that make up this one.
     *
     * @return this prism alone if it is convex, else two or more
     */
    public List<Prism> convexParts() {
        return isConvex()
                ? List.of(this)
                : footprint.convexParts().stream()
                        .map(part -> new Prism(part, bottomMm, topMm, roundMm))
                        .toList();
    }

    @Override
    public Solid moved(Move move) {
        if (!move.keepsVertical()) {
            return tilted(move);
        }
        Vector3D shift = move.shift();
        Footprint moved = footprint.mapped(
                move.rotation(0, 0),
                move.rotation(0, 1),
                move.rotation(1, 0),
                move.rotation(1, 1),
                shift.getX(),
                shift.getY());
        boolean upsideDown = move.rotation(2, 2) < 0;
        double low = (upsideDown ? -topMm : bottomMm) + shift.getZ();
        double high = (upsideDown ? -bottomMm : topMm) + shift.getZ();
        return new Prism(moved, low, high, roundMm);
    }

    private Solid tilted(Move move) {
        if (!isConvex()) {
            throw new IllegalArgumentException(
                    "an upright prism that is not convex can't be tilted in one piece; move it as a body");
        }
        if (footprint.radiusMm() > 0) {
            return RoundCylinder.upright(this).moved(move);
        }
        return ConvexPolyhedron.of(this).moved(move);
    }

    /** The corners of a convex footprint's prism: the bottom ring, then the top ring. */
    static List<Vector3D> corners(Footprint part, double bottomMm, double topMm) {
        List<Vector3D> corners = new ArrayList<>();
        for (double height : new double[] {bottomMm, topMm}) {
            for (int i = 0; i < part.cornerCount(); i++) {
                corners.add(Vector3D.of(part.x(i), part.y(i), height));
            }
        }
        return corners;
    }

    private ConvexCore core(Footprint part) {
        List<Vector3D> normals = new ArrayList<>(List.of(Vector3D.Unit.PLUS_Z));
        List<Vector3D> edges = new ArrayList<>(List.of(Vector3D.Unit.PLUS_Z));
        int n = part.cornerCount();
        for (int i = 0; n > 1 && i < n; i++) {
            Vector2D side = Vector2D.of(part.x((i + 1) % n) - part.x(i), part.y((i + 1) % n) - part.y(i));
            normals.add(Vector3D.of(side.getY(), -side.getX(), 0));
            edges.add(Vector3D.of(side.getX(), side.getY(), 0));
        }
        List<Vector3D> corners = corners(part, bottomMm, topMm);
        return ConvexCore.withDisc(corners, normals, edges, Vector3D.Unit.PLUS_Z, part.radiusMm(), roundMm);
    }

    @Override
    public String toString() {
        return "Prism[" + footprint + ", " + bottomMm + ".." + topMm + " mm, rounded " + roundMm + " mm]";
    }
}
