package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * What everything that has a place shares.
 *
 * @param path section and key, as {@code units.cooler}
 * @param id the key alone; unique in the whole file
 * @param title what people call it; the id if unsaid
 * @param in the container's id, if said
 * @param at distances from the container's faces, in file order
 * @param sizes as far as given
 * @param turned about the upright axis, nose to the left positive (deg); absent means 0
 * @param bodies further boxes, placed from the faces of the first one
 * @param mass absent if unsaid (kg)
 */
public record Placed(
        String path,
        String id,
        String title,
        Optional<String> in,
        List<FaceDistance> at,
        ToldSizes sizes,
        Optional<Reading> turned,
        List<ToldBox> bodies,
        Optional<Reading> mass) {
    /** Copies the lists. */
    public Placed {
        at = List.copyOf(at);
        bodies = List.copyOf(bodies);
    }
}
