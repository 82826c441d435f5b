package org.spile.geometry.kernel.solid;

import java.util.List;

/**
 * A closed piece of space: a core, grown in the Euclidean sense by a rounding radius.
 *
 * <p>Lengths in mm; coordinates within 1 km of the origin. All kinds are immutable and refuse to be degenerate.
 */
public sealed interface Solid permits Prism, ConvexPolyhedron, RoundCylinder {
    /**
     * The smallest axis-parallel box round the solid.
     *
     * @return the bounds, rounding included
     */
    Box3 bounds();

    /**
     * The solid after a rigid motion.
     *
     * @param move the motion
     * @return the moved solid, perhaps of another kind
     * @throws IllegalArgumentException if an upright prism that is not convex would be tilted (see {@link
     *     Body#moved}), or the place is out of range
     */
    Solid moved(Move move);

    /**
     * The rounding radius.
     *
     * @return mm, 0 for sharp edges
     */
    double roundMm();

    /**
     * Grows the solid in the Euclidean sense, which rounds its edges.
     *
     * @param growthMm further radius in mm, not negative
     * @return the grown solid
     * @throws IllegalArgumentException if the growth is negative or out of range
     */
    Solid rounded(double growthMm);

    /**
     * Grows the solid with square corners, as boards of insulation do: every face moves out by the growth and neighbours
     * meet in a mitre. What is round stays round with a greater radius; a rounding radius is kept as it is.
     *
     * <p>Beside an edge this takes more room than {@link #rounded}, never less.
     *
     * @param growthMm how far each face moves out in mm, not negative
     * @return the grown solid
     * @throws IllegalArgumentException if the growth is negative or out of range, or a corner is so sharp that it would
     *     run out in a spike: in plan sharper than 10°, in space moving by more than 11.4 times the growth
     */
    Solid grownSquare(double growthMm);

    /**
     * Whether the solid is convex.
     *
     * @return true if convex
     */
    boolean isConvex();

    /**
     * The convex cores whose union, grown, is this solid.
     *
     * @return one core if convex, else two or more, in a fixed order
     */
    List<ConvexCore> cores();
}
