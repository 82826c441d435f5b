package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A trailer's axles.
 *
 * @param rear each axle's distance forward of the deck's rear edge (mm)
 * @param track between the wheels' middles (mm)
 * @param shared whether the axles share their load
 */
public record ToldAxles(String path, List<Reading> rear, Optional<Reading> track, boolean shared) {
    /** Copies the list. */
    public ToldAxles {
        rear = List.copyOf(rear);
    }
}
