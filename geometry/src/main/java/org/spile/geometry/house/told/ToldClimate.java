package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The weather the house must stand.
 *
 * @param latitude deg, north positive
 * @param altitude above the sea (m)
 * @param states by name: outside and inside, each temperature (K) at relative humidity (0..1)
 */
public record ToldClimate(
        String path, Optional<Reading> latitude, Optional<Reading> altitude, Map<String, Map<String, Rated>> states) {}
