package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A service that isn't a duct.
 *
 * @param kind drain, refrigerant, cable or water
 * @param section round, or wide and high; outside sizes before {@code layers}
 * @param fall of a drain's level legs, as a ratio
 * @param radius least bend radius (mm)
 * @param trap height of its trap (mm)
 * @param pump lift of its pump (mm)
 */
public record ToldLine(
        String path,
        String id,
        String title,
        String kind,
        ToldEnd from,
        ToldEnd to,
        ToldSection section,
        List<ToldLayer> layers,
        List<ToldStation> stations,
        Optional<Reading> fall,
        Optional<Reading> radius,
        Optional<Reading> trap,
        Optional<Reading> pump) {
    /** Copies the lists. */
    public ToldLine {
        layers = List.copyOf(layers);
        stations = List.copyOf(stations);
    }
}
