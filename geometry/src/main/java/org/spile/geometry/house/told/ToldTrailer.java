package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A movable base; its frame is x forward to the coupling, y left, z up from the deck top at the rear edge's middle.
 *
 * @param deck its {@code sizes} give the deck; it has no place of its own
 * @param ground deck top above the road (mm)
 * @param roof bare underside, profile up from the deck; layers go on outwards
 * @param walls layers from the inside out; absent means not known
 * @param coupling the place of the coupling, from the deck's faces; empty if unsaid
 * @param dock how it docks to another, if it does
 */
public record ToldTrailer(
        Placed deck,
        Optional<Reading> ground,
        Optional<ToldSurface> roof,
        List<ToldLayer> walls,
        List<ToldLayer> floor,
        List<FaceDistance> coupling,
        Optional<ToldAxles> axles,
        Optional<ToldDock> dock,
        List<ToldWeighing> weighed) {
    /** Copies the lists. */
    public ToldTrailer {
        walls = List.copyOf(walls);
        floor = List.copyOf(floor);
        coupling = List.copyOf(coupling);
        weighed = List.copyOf(weighed);
    }
}
