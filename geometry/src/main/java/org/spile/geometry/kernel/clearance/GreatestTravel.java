package org.spile.geometry.kernel.clearance;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;

/**
 * The greatest travel in a direction all the way to which moving bodies keep their clearance to fixed ones.
 *
 * @param travelMm the travel in mm; 0 if the start is blocked, infinite if nothing stands in the way
 * @param governing what stops it; nothing if nothing does
 */
public record GreatestTravel(double travelMm, Optional<BlockedTravel> governing) {
    /**
     * Finds the greatest free travel.
     *
     * @param moving bodies that travel together
     * @param fixed bodies that stay
     * @param direction direction of travel, any length but 0
     * @param marginOf demanded clearance of each pair
     * @return the answer
     * @throws IllegalArgumentException if the direction has no length or a margin is negative
     */
    public static GreatestTravel free(List<Body> moving, List<Body> fixed, Vector3D direction, PairMargin marginOf) {
        for (BlockedTravel next : BlockedTravels.of(moving, fixed, direction, marginOf)) {
            if (next.interval().toMm() > GeometryTolerance.CONTACT_MM) {
                return new GreatestTravel(Math.max(0, next.interval().fromMm()), Optional.of(next));
            }
        }
        return new GreatestTravel(Double.POSITIVE_INFINITY, Optional.empty());
    }
}
