package org.spile.geometry.house.told;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A thing to be fitted.
 *
 * @param blows the way its air goes: forward, aft, left, right, up, down; long lies along it
 * @param hungFrom ids of what carries it from above, or {@code top}
 * @param standsOn ids of what carries it from below
 * @param joins the spigot it joins, as {@code cooler.outlet}; empty if none
 * @param layers its own shell, from the inside out
 * @param layersWithin how many of the layers, counted from the inside, its sizes take in: 0 for sizes of the clear inside;
 *     what lies further out comes on top
 * @param voidMm depth of cavity demanded by the maker (mm)
 * @param clearance demanded free room by face of the body (mm)
 * @param service rooms for service by purpose
 * @param spigots and ports: by name
 * @param fan rated points by speed: flow (m3/s) at external static pressure (Pa)
 */
public record ToldUnit(
        Placed placed,
        String blows,
        List<String> hungFrom,
        List<String> standsOn,
        String joins,
        List<ToldLayer> layers,
        int layersWithin,
        Optional<Reading> voidMm,
        Map<String, Reading> clearance,
        Map<String, ToldService> service,
        Map<String, ToldSpigot> spigots,
        Map<String, ToldSpigot> ports,
        Map<String, List<Rated>> fan,
        Optional<Rated> cooling,
        Optional<Rated> heating) {
    /** Copies the lists. */
    public ToldUnit {
        hungFrom = List.copyOf(hungFrom);
        standsOn = List.copyOf(standsOn);
        layers = List.copyOf(layers);
    }
}
