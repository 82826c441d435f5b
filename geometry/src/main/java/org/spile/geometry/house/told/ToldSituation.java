package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A named state of the air; the first one is home and the others say what differs.
 *
 * @param states by id of fan, damper, flap, filter or door
 * @param stance the stance it holds in; empty: the first
 * @param climate the climate's state; empty: as in the first
 * @param wind m/s
 * @param windFrom left, right, front, rear; empty if unsaid
 */
public record ToldSituation(
        String path,
        String id,
        Map<String, ToldState> states,
        String stance,
        String climate,
        Optional<Reading> wind,
        String windFrom) {}
