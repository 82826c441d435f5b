package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * A thing made of one or more solids that move together; its space is their union.
 *
 * @param solids at least one solid
 */
public record Body(List<Solid> solids) {
    /**
     * Takes the solids in order.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Body {
        solids = List.copyOf(solids);
        if (solids.isEmpty()) {
            throw new IllegalArgumentException("a body needs at least one solid and got none");
        }
    }

    /**
     * A body of the given solids.
     *
     * @param solids at least one solid
     * @return the body
     * @throws IllegalArgumentException if there is none
     */
    public static Body of(Solid... solids) {
        return new Body(List.of(solids));
    }

    /**
     * The smallest axis-parallel box round the body.
     *
     * @return the bounds
     */
    public Box3 bounds() {
        return solids.stream().map(Solid::bounds).reduce(Box3::with).orElseThrow();
    }

    /**
     * The body after a rigid motion. An upright prism that is not convex is split into convex ones if it is tilted, so
     * the number of solids may grow.
     *
     * @param move the motion
     * @return the moved body
     * @throws IllegalArgumentException if the place is out of range
     */
    public Body moved(Move move) {
        List<Solid> moved = new ArrayList<>();
        for (Solid solid : solids) {
            if (solid instanceof Prism prism && !prism.isConvex() && !move.keepsVertical()) {
                prism.convexParts().forEach(part -> moved.add(part.moved(move)));
            } else {
                moved.add(solid.moved(move));
            }
        }
        return new Body(moved);
    }

    /**
     * Grows every solid in the Euclidean sense.
     *
     * @param growthMm further radius in mm, not negative
     * @return the grown body
     * @throws IllegalArgumentException if the growth is negative or out of range
     */
    public Body rounded(double growthMm) {
        return new Body(solids.stream().map(solid -> solid.rounded(growthMm)).toList());
    }

    /**
     * Grows every solid with square corners, see {@link Solid#grownSquare}.
     *
     * @param growthMm how far each face moves out in mm, not negative
     * @return the grown body
     * @throws IllegalArgumentException if the growth is negative or out of range, or a corner is too sharp for it
     */
    public Body grownSquare(double growthMm) {
        return new Body(
                solids.stream().map(solid -> solid.grownSquare(growthMm)).toList());
    }
}
