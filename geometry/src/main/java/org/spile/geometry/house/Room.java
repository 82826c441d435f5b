package org.spile.geometry.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A room in the frame of its trailer.
 *
 * @param floor height of the finished floor
 * @param upper its own ceiling or the roof; absent if there is neither
 * @param upperLined the same with what is fixed in front of it
 * @param ceilings what cavities put in front of that
 */
record Room(
        ToldRoom told,
        Trailer trailer,
        Plan plan,
        Stack floor,
        Optional<Slope> upper,
        Optional<Slope> upperLined,
        List<Surface.Patch> ceilings) {
    Room {
        ceilings = List.copyOf(ceilings);
    }

    String id() {
        return told.placed().id();
    }

    Room under(List<Surface.Patch> found) {
        return new Room(told, trailer, plan, floor, upper, upperLined, found);
    }

    /** The ceiling as seen from below, if there is one anywhere. */
    Optional<Surface> ceiling() {
        return upper.or(() -> ceilings.stream().map(Surface.Patch::at).findFirst())
                .map(slope -> new Surface(Way.UP, slope, ceilings));
    }

    Enclosure enclosure() {
        Map<String, Surface> faces = sides();
        Surface bottom = Surface.level(Way.DOWN, floor);
        faces.put("floor", bottom);
        ceiling().ifPresent(surface -> faces.put("ceiling", surface));
        return new Enclosure(id(), trailer.id(), faces, Optional.of(bottom), ceiling(), List.of(id()));
    }

    private Map<String, Surface> sides() {
        return sides(plan);
    }

    static Map<String, Surface> sides(Plan plan) {
        Map<String, Surface> faces = new LinkedHashMap<>();
        for (Way way : List.of(Way.AFT, Way.FORWARD, Way.LEFT, Way.RIGHT)) {
            faces.put(way.face(), Surface.level(way, plan.extent(way.axis()).end(way)));
        }
        return faces;
    }
}
