package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A simple closed polygon in the plane, with holes if wanted.
 *
 * <p>The shell runs counter-clockwise and the holes clockwise, so the filled side is always on the left. The outline
 * is a closed set: its boundary belongs to it. Lengths in mm, areas in mm², coordinates within 1 km of the origin.
 * Immutable.
 */
public final class Outline {
    private final List<Vector2D> shell;
    private final List<List<Vector2D>> holes;
    private final Rings rings;

    private Outline(List<Vector2D> shell, List<List<Vector2D>> holes) {
        this.shell = List.copyOf(shell);
        this.holes = holes.stream().map(List::copyOf).toList();
        this.rings = Rings.of(this.shell, this.holes);
    }

    /**
     * Makes an outline without holes from its corners, in either sense of rotation.
     *
     * @param corners at least three different corners in mm; a repeated closing corner is dropped
     * @return the outline
     * @throws IllegalArgumentException with the reason and place if {@link #check} finds a fault
     */
    public static Outline of(List<Vector2D> corners) {
        check(corners).ifPresent(Outline::refuse);
        return new Outline(turned(corners, true), List.of());
    }

    /**
     * Makes an axis-parallel rectangle.
     *
     * @param minX least x in mm
     * @param minY least y in mm
     * @param maxX greatest x in mm
     * @param maxY greatest y in mm
     * @return the rectangle
     * @throws IllegalArgumentException if a side is not longer than the contact tolerance
     */
    public static Outline rectangle(double minX, double minY, double maxX, double maxY) {
        if (!(maxX - minX > GeometryTolerance.CONTACT_MM) || !(maxY - minY > GeometryTolerance.CONTACT_MM)) {
            throw new IllegalArgumentException(
                    "a rectangle of " + (maxX - minX) + " by " + (maxY - minY) + " mm has no area");
        }
        return of(List.of(
                Vector2D.of(minX, minY), Vector2D.of(maxX, minY), Vector2D.of(maxX, maxY), Vector2D.of(minX, maxY)));
    }

    /**
     * Finds why corners would not make an outline, so that a reader can report it as a fault of the data.
     *
     * @param corners the corners in mm
     * @return the first fault, or nothing if the corners make an outline
     */
    public static Optional<OutlineFault> check(List<Vector2D> corners) {
        return OutlineCheck.fault(corners);
    }

    /**
     * Finds why holes would not fit this outline.
     *
     * @param inner the corners of each hole in mm
     * @return the first fault, or nothing if {@link #withHoles} would take them
     */
    public Optional<OutlineFault> checkHoles(List<List<Vector2D>> inner) {
        for (List<Vector2D> hole : inner) {
            Optional<OutlineFault> fault = check(hole);
            if (fault.isPresent()) {
                return fault;
            }
        }
        List<List<Vector2D>> all = new ArrayList<>(holes);
        all.addAll(inner);
        return JtsShapes.fault(shell, all);
    }

    /**
     * Cuts holes into this outline.
     *
     * @param inner the corners of each hole in mm, in either sense of rotation
     * @return a new outline with these holes beside those it has
     * @throws IllegalArgumentException if a hole is faulty, leaves the shell or meets another hole along a side
     */
    public Outline withHoles(List<List<Vector2D>> inner) {
        checkHoles(inner).ifPresent(Outline::refuse);
        List<List<Vector2D>> all = new ArrayList<>(holes);
        inner.forEach(hole -> all.add(turned(hole, false)));
        return new Outline(shell, all);
    }

    /** Takes rings that are known to be valid and turned the right way. */
    static Outline trusted(List<Vector2D> shell, List<List<Vector2D>> holes) {
        return new Outline(shell, holes);
    }

    /**
     * The corners of the outer boundary.
     *
     * @return corners in mm, counter-clockwise, first not repeated
     */
    public List<Vector2D> shell() {
        return shell;
    }

    /**
     * The corners of each hole.
     *
     * @return corners in mm, clockwise, first not repeated
     */
    public List<List<Vector2D>> holes() {
        return holes;
    }

    /**
     * The filled area.
     *
     * @return area in mm², holes taken off
     */
    public double areaMm2() {
        double area = OutlineCheck.signedAreaMm2(shell);
        for (List<Vector2D> hole : holes) {
            area += OutlineCheck.signedAreaMm2(hole);
        }
        return area;
    }

    /**
     * Whether a point lies in the filled area or on its boundary.
     *
     * @param point a point in mm
     * @return true inside and on the boundary (within the arithmetic tolerance), false in a hole
     */
    public boolean contains(Vector2D point) {
        return rings.contains(point.getX(), point.getY());
    }

    /**
     * The distance between the filled areas.
     *
     * @param other the other outline
     * @return distance in mm; 0 if they touch or overlap; an outline within a hole of the other is apart from it
     */
    public double distanceTo(Outline other) {
        PlanarGap gap = new PlanarGap();
        gap.measure(Footprint.of(this), Footprint.of(other));
        return Math.max(0, gap.distanceMm());
    }

    /**
     * Whether the outline has no hole and no corner that turns inwards by more than the contact tolerance.
     *
     * @return true if convex
     */
    public boolean isConvex() {
        return rings.convex();
    }

    /**
     * Turns the outline about the origin and then shifts it.
     *
     * @param angleRad counter-clockwise angle in radians
     * @param dx shift in mm
     * @param dy shift in mm
     * @return the moved outline
     * @throws IllegalArgumentException if it would leave the range of coordinates
     */
    public Outline turnedAndMoved(double angleRad, double dx, double dy) {
        double cos = Turn.cos(angleRad);
        double sin = Turn.sin(angleRad);
        return mapped(cos, -sin, sin, cos, dx, dy);
    }

    /**
     * Maps the outline by a rotation or reflection matrix and a shift: x' = xx·x + xy·y + dx, y' = yx·x + yy·y + dy.
     *
     * @param xx matrix entry
     * @param xy matrix entry
     * @param yx matrix entry
     * @param yy matrix entry
     * @param dx shift in mm
     * @param dy shift in mm
     * @return the mapped outline
     * @throws IllegalArgumentException if the matrix does not keep lengths, or the place leaves the range
     */
    public Outline mapped(double xx, double xy, double yx, double yy, double dx, double dy) {
        double determinant = xx * yy - xy * yx;
        if (Math.abs(xx * xx + yx * yx - 1) > 1e-9 || Math.abs(Math.abs(determinant) - 1) > 1e-9) {
            throw new IllegalArgumentException("the matrix [" + xx + " " + xy + "; " + yx + " " + yy
                    + "] does not keep lengths; only turns and reflections are taken");
        }
        List<List<Vector2D>> moved = new ArrayList<>();
        moved.add(ring(shell, xx, xy, yx, yy, dx, dy, determinant < 0));
        for (List<Vector2D> hole : holes) {
            moved.add(ring(hole, xx, xy, yx, yy, dx, dy, determinant < 0));
        }
        return new Outline(moved.get(0), moved.subList(1, moved.size()));
    }

    /**
     * The least x.
     *
     * @return mm
     */
    public double minX() {
        return rings.minX();
    }

    /**
     * The least y.
     *
     * @return mm
     */
    public double minY() {
        return rings.minY();
    }

    /**
     * The greatest x.
     *
     * @return mm
     */
    public double maxX() {
        return rings.maxX();
    }

    /**
     * The greatest y.
     *
     * @return mm
     */
    public double maxY() {
        return rings.maxY();
    }

    Rings rings() {
        return rings;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline that && shell.equals(that.shell) && holes.equals(that.holes);
    }

    @Override
    public int hashCode() {
        return 31 * shell.hashCode() + holes.hashCode();
    }

    @Override
    public String toString() {
        return "Outline" + shell + (holes.isEmpty() ? "" : " with holes " + holes);
    }

    private static List<Vector2D> ring(
            List<Vector2D> from, double xx, double xy, double yx, double yy, double dx, double dy, boolean mirrored) {
        List<Vector2D> to = new ArrayList<>(from.size());
        for (Vector2D p : from) {
            to.add(Vector2D.of(
                    GeometryTolerance.inRange("x", xx * p.getX() + xy * p.getY() + dx),
                    GeometryTolerance.inRange("y", yx * p.getX() + yy * p.getY() + dy)));
        }
        if (mirrored) {
            Collections.reverse(to);
        }
        return to;
    }

    private static List<Vector2D> turned(List<Vector2D> corners, boolean counterClockwise) {
        List<Vector2D> ring = new ArrayList<>();
        for (Vector2D corner : OutlineCheck.withoutRepeats(corners)) {
            ring.add(Vector2D.of(corner.getX() + 0.0, corner.getY() + 0.0));
        }
        if (OutlineCheck.signedAreaMm2(ring) > 0 != counterClockwise) {
            Collections.reverse(ring);
        }
        return ring;
    }

    private static void refuse(OutlineFault fault) {
        throw new IllegalArgumentException(fault.reason() + " at (" + fault.at().getX() + ", "
                + fault.at().getY() + ") mm; an outline must be closed, simple and have an area");
    }
}
