package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * How far apart two things are: certified bounds of the signed distance, and where.
 *
 * <p>A negative distance is a penetration depth: the least shift of B along {@link #direction()} that ends the
 * overlap. The bounds are nearly always equal to within 1e-9 mm; where they are not, the truth lies between them. So it
 * is for round bars skew and close to contact (of random pairs at 1e-8 to 10 mm, 1 in 100 is open by more than 1e-8 mm,
 * 1 in 3,000 by more than 1e-6, none of 100,000 by more than 2e-5), and for depths of round and of concave things.
 *
 * @param lowerMm the signed distance is not below this, in mm
 * @param upperMm the signed distance is not above this, in mm
 * @param onA the witness point on A, in mm; for an overlap the point of A deepest in B
 * @param onB the witness point on B, in mm; for an overlap the point of B deepest in A
 * @param direction unit vector from A to B, along which B gets away from A, also when they overlap
 * @param pieceA which piece of body A, from 0
 * @param pieceB which piece of body B, from 0
 */
public record Gap(
        double lowerMm, double upperMm, Vector3D onA, Vector3D onB, Vector3D direction, int pieceA, int pieceB) {
    /**
     * Checks the order of the bounds.
     *
     * @throws IllegalArgumentException if the lower bound is above the upper, or one is not a number
     */
    public Gap {
        if (!(lowerMm <= upperMm)) {
            throw new IllegalArgumentException("the lower bound " + lowerMm + " mm is above the upper " + upperMm);
        }
    }

    /**
     * The same gap with A and B exchanged.
     *
     * @return the mirrored gap
     */
    public Gap swapped() {
        return new Gap(lowerMm, upperMm, onB, onA, direction.negate(), pieceB, pieceA);
    }
}
