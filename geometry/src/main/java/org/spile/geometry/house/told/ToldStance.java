package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A named state of all movers, trailers and stores; the first one is home and the others say what differs.
 *
 * @param states by id: a word (shut, open, docked, away, full, half, empty) or a position
 * @param road whether it is a state on the road; absent: as in the first
 * @param tilt by {@code nose}, {@code left}: up positive (deg)
 */
public record ToldStance(
        String path, String id, Map<String, ToldState> states, Optional<Boolean> road, Map<String, Reading> tilt) {}
