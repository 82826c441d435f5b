package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A plan shape as a core grown by a radius: a disc is a point, a slot a segment, anything else an {@link Outline}.
 *
 * <p>Round shapes stay exact: the distance to a disc is the distance to its centre less the radius. The radius counts
 * as Euclidean growth, so an outline with a radius has round outer corners. Lengths in mm. Immutable.
 */
public final class Footprint {
    private final Rings core;
    private final Outline outline;
    private final double radiusMm;

    private Footprint(Rings core, Outline outline, double radiusMm) {
        this.core = core;
        this.outline = outline;
        this.radiusMm = GeometryTolerance.notNegative("radius", radiusMm);
        if (outline == null && radiusMm <= GeometryTolerance.CONTACT_MM) {
            throw new IllegalArgumentException("a disc or slot of radius " + radiusMm + " mm has no area");
        }
    }

    /**
     * Takes an outline as it is.
     *
     * @param outline the outline
     * @return a footprint with radius 0
     */
    public static Footprint of(Outline outline) {
        return new Footprint(outline.rings(), outline, 0);
    }

    /**
     * Makes a disc.
     *
     * @param centreX centre in mm
     * @param centreY centre in mm
     * @param radiusMm radius in mm, more than the contact tolerance
     * @return the disc
     * @throws IllegalArgumentException if the radius has no area
     */
    public static Footprint disc(double centreX, double centreY, double radiusMm) {
        return new Footprint(ring(List.of(place(centreX, centreY))), null, radiusMm);
    }

    /**
     * Makes a slot: all points within a radius of a segment.
     *
     * @param from one end of the middle line in mm
     * @param to other end in mm
     * @param radiusMm half the slot's width in mm, more than the contact tolerance
     * @return the slot, or a disc if both ends are one place
     * @throws IllegalArgumentException if the radius has no area
     */
    public static Footprint slot(Vector2D from, Vector2D to, double radiusMm) {
        if (from.distance(to) <= GeometryTolerance.CONTACT_MM) {
            return disc(from.getX(), from.getY(), radiusMm);
        }
        List<Vector2D> ends = List.of(place(from.getX(), from.getY()), place(to.getX(), to.getY()));
        return new Footprint(ring(ends), null, radiusMm);
    }

    /**
     * Grows the footprint in the plane, Euclidean sense.
     *
     * @param growthMm growth in mm, not negative
     * @return the grown footprint
     * @throws IllegalArgumentException if the growth is negative or out of range
     */
    public Footprint grown(double growthMm) {
        return new Footprint(core, outline, radiusMm + GeometryTolerance.notNegative("growth", growthMm));
    }

    /**
     * Grows the footprint in the plane with square corners: every side moves out and neighbours meet in a mitre.
     *
     * <p>Round corners keep their middle and grow their radius. A convex outline is exact; one that is not convex comes
     * back on the 1 µm grid of {@link Regions}.
     *
     * @param growthMm growth in mm, not negative
     * @return the grown footprint
     * @throws IllegalArgumentException if the growth is negative or out of range, or an outward corner is sharper than
     *     10°
     */
    public Footprint grownSquare(double growthMm) {
        double growth = GeometryTolerance.notNegative("growth", growthMm);
        if (growth == 0 || radiusMm > 0) {
            return grown(growth);
        }
        if (outline.isConvex()) {
            return of(ConvexMitre.grown(outline, growth));
        }
        // What hangs together still does after growing, so it is one outline.
        return of(Regions.grownSquare(List.of(outline), growth).get(0));
    }

    /**
     * Maps by a rotation or reflection and a shift, as {@link Outline#mapped}.
     *
     * @param xx matrix entry
     * @param xy matrix entry
     * @param yx matrix entry
     * @param yy matrix entry
     * @param dx shift in mm
     * @param dy shift in mm
     * @return the mapped footprint
     * @throws IllegalArgumentException if the matrix does not keep lengths, or the place leaves the range
     */
    public Footprint mapped(double xx, double xy, double yx, double yy, double dx, double dy) {
        if (outline != null) {
            Outline moved = outline.mapped(xx, xy, yx, yy, dx, dy);
            return new Footprint(moved.rings(), moved, radiusMm);
        }
        List<Vector2D> moved = new ArrayList<>();
        for (int i = 0; i < core.count(); i++) {
            moved.add(place(xx * core.x[i] + xy * core.y[i] + dx, yx * core.x[i] + yy * core.y[i] + dy));
        }
        return new Footprint(ring(moved), null, radiusMm);
    }

    /**
     * The core, if it is an outline.
     *
     * @return the outline, or nothing for a disc or slot
     */
    public Optional<Outline> outline() {
        return Optional.ofNullable(outline);
    }

    /**
     * The radius by which the core is grown.
     *
     * @return mm
     */
    public double radiusMm() {
        return radiusMm;
    }

    /**
     * How many corners the core has: 1 for a disc, 2 for a slot.
     *
     * @return the count, holes included
     */
    public int cornerCount() {
        return core.count();
    }

    /**
     * A corner of the core.
     *
     * @param corner index from 0
     * @return x in mm
     */
    public double x(int corner) {
        return core.x[corner];
    }

    /**
     * A corner of the core.
     *
     * @param corner index from 0
     * @return y in mm
     */
    public double y(int corner) {
        return core.y[corner];
    }

    /**
     * Whether the footprint is convex.
     *
     * @return true for discs, slots and convex outlines
     */
    public boolean isConvex() {
        return outline == null || outline.isConvex();
    }

    /**
     * The convex footprints that make up this one, each with the same radius.
     *
     * @return one or more; their union is this footprint
     */
    public List<Footprint> convexParts() {
        if (isConvex()) {
            return List.of(this);
        }
        return ConvexParts.of(outline).stream()
                .map(part -> new Footprint(part.rings(), part, radiusMm))
                .toList();
    }

    /**
     * Whether a point lies in the footprint or on its boundary.
     *
     * @param point a point in mm
     * @return true inside and on the boundary
     */
    public boolean contains(Vector2D point) {
        if (outline != null && outline.contains(point)) {
            return true;
        }
        double reach = radiusMm + GeometryTolerance.ARITHMETIC_MM;
        for (int i = 0; i < core.count(); i++) {
            if (core.squaredToSide(i, point.getX(), point.getY()) <= reach * reach) {
                return true;
            }
        }
        return false;
    }

    /**
     * The least x.
     *
     * @return mm, radius included
     */
    public double minX() {
        return core.minX() - radiusMm;
    }

    /**
     * The least y.
     *
     * @return mm, radius included
     */
    public double minY() {
        return core.minY() - radiusMm;
    }

    /**
     * The greatest x.
     *
     * @return mm, radius included
     */
    public double maxX() {
        return core.maxX() + radiusMm;
    }

    /**
     * The greatest y.
     *
     * @return mm, radius included
     */
    public double maxY() {
        return core.maxY() + radiusMm;
    }

    /**
     * The footprint as polygons whose straight sides are exact and whose arcs are circumscribed.
     *
     * @param sagittaMm the most by which a corner may stand out from an arc, in mm, more than 0
     * @return outlines that cover the footprint
     * @throws IllegalArgumentException if the sagitta is not positive
     */
    public List<Outline> circumscribed(double sagittaMm) {
        return radiusMm == 0 ? List.of(outline) : Growth.circumscribed(this, sagittaMm);
    }

    Rings core() {
        return core;
    }

    @Override
    public String toString() {
        return "Footprint[" + (outline == null ? cornerCount() == 1 ? "disc" : "slot" : outline) + " radius " + radiusMm
                + " mm, " + minX() + ".." + maxX() + " by " + minY() + ".." + maxY() + "]";
    }

    private static Vector2D place(double x, double y) {
        return Vector2D.of(GeometryTolerance.inRange("x", x), GeometryTolerance.inRange("y", y));
    }

    private static Rings ring(List<Vector2D> corners) {
        return Rings.of(corners, List.of());
    }
}
