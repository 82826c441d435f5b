package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;

/**
 * The least travel in a direction after which moving bodies keep their clearance to fixed ones.
 *
 * <p>Each pair forbids open intervals of travel; the answer is the least travel, zero or more, outside their union,
 * taken exactly from the intervals' ends. The union may have holes: free travels between blocked ones are reported as
 * pockets, a single point where a slot just fits.
 *
 * @param travelMm the least free travel in mm, 0 if the start is free
 * @param governing the interval whose end is the answer; nothing if the start is free
 * @param pockets the free travels between blocked ones, from 0 on, in ascending order; the first may start at 0, and
 *     what lies beyond the last blocked interval is not listed
 * @param lastBlockedMm the travel beyond which all are free, in mm, not below 0
 */
public record LeastTravel(
        double travelMm, Optional<BlockedTravel> governing, List<ExitInterval> pockets, double lastBlockedMm) {
    /** Copies the list of pockets. */
    public LeastTravel {
        pockets = List.copyOf(pockets);
    }

    /**
     * Finds the least free travel.
     *
     * @param moving bodies that travel together
     * @param fixed bodies that stay
     * @param direction direction of travel, any length but 0
     * @param marginOf demanded clearance of each pair
     * @return the answer
     * @throws IllegalArgumentException if the direction has no length or a margin is negative
     */
    public static LeastTravel clear(List<Body> moving, List<Body> fixed, Vector3D direction, PairMargin marginOf) {
        double slack = GeometryTolerance.CONTACT_MM;
        double free = 0;
        double answer = Double.NaN;
        BlockedTravel governing = null;
        BlockedTravel governingAnswer = null;
        List<ExitInterval> pockets = new ArrayList<>();
        for (BlockedTravel next : BlockedTravels.of(moving, fixed, direction, marginOf)) {
            double from = next.interval().fromMm();
            double to = next.interval().toMm();
            if (to - slack <= free) {
                continue;
            }
            if (from + slack >= free) {
                pockets.add(new ExitInterval(free, Math.max(free, from)));
                if (Double.isNaN(answer)) {
                    answer = free;
                    governingAnswer = governing;
                }
            }
            free = to;
            governing = next;
        }
        boolean found = !Double.isNaN(answer);
        return new LeastTravel(
                found ? answer : free, Optional.ofNullable(found ? governingAnswer : governing), pockets, free);
    }
}
