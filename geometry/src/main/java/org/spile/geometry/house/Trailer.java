package org.spile.geometry.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A trailer in its own frame: x forward, y left, z up from the deck top at the rear edge's middle.
 *
 * @param told empty for the one assumed round a house that names none
 * @param deck its outline
 * @param under the bare underside of its roof
 * @param over the weather side of its roof
 */
record Trailer(String id, Optional<ToldTrailer> told, Plan deck, Optional<Slope> under, Optional<Slope> over) {
    String path() {
        return told.map(t -> t.deck().path()).orElse("trailers");
    }

    String title() {
        return told.map(t -> t.deck().title()).orElse("the trailer assumed round it");
    }

    /** Its faces as seen from outside: deck edges, deck top, weather side of the roof. */
    Enclosure enclosure() {
        Map<String, Surface> faces = new LinkedHashMap<>();
        for (Way way : List.of(Way.AFT, Way.FORWARD, Way.LEFT, Way.RIGHT)) {
            faces.put(way.face(), Surface.level(way, edge(way)));
        }
        Surface floor = Surface.level(Way.DOWN, Stack.ZERO);
        faces.put("deck", floor);
        over.ifPresent(slope -> faces.put("roof", Surface.of(Way.UP, slope)));
        return new Enclosure(
                id, id, faces, Optional.of(floor), under.map(slope -> Surface.of(Way.UP, slope)), List.of());
    }

    Stack edge(Way way) {
        Axis axis = way.axis();
        return deck.extent(axis).end(way);
    }
}
