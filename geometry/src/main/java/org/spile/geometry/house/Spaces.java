package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Stack;

/** What things are placed in: trailers, rooms and cavities, by id. */
final class Spaces {
    private final ToldHouse told;
    private final Names names;
    private final Troubles troubles;
    private final Map<String, Trailer> trailers = new LinkedHashMap<>();
    private final Map<String, Room> rooms = new LinkedHashMap<>();
    private final Map<String, Cavity> cavities = new LinkedHashMap<>();

    Spaces(ToldHouse told, Names names, Readings readings, Troubles troubles) {
        this.told = told;
        this.names = names;
        this.troubles = troubles;
        new SpaceMaker(told, names, readings, troubles).into(trailers, rooms, cavities);
    }

    Map<String, Trailer> trailers() {
        return trailers;
    }

    Map<String, Room> rooms() {
        return rooms;
    }

    Map<String, Cavity> cavities() {
        return cavities;
    }

    /** What an id names, if it could be made; a trouble if it names no space. */
    Optional<Enclosure> named(String id, String path) {
        Set<String> wanted = new LinkedHashSet<>(told.cavities().keySet());
        wanted.addAll(told.rooms().keySet());
        wanted.addAll(told.trailers().keySet());
        if (!wanted.contains(id)) {
            names.missing(path, id, wanted, "something to be in", troubles);
            return Optional.empty();
        }
        return made(id);
    }

    Optional<Enclosure> made(String id) {
        return Optional.ofNullable(cavities.get(id))
                .map(Cavity::enclosure)
                .or(() -> Optional.ofNullable(rooms.get(id)).map(Room::enclosure))
                .or(() -> Optional.ofNullable(trailers.get(id)).map(Trailer::enclosure));
    }

    /** What a thing is in: as told, or the only one there is; units look for a cavity first. */
    Optional<Enclosure> of(Placed placed, boolean cavityFirst) {
        if (placed.in().isPresent()) {
            return named(placed.in().get(), placed.path() + ".in");
        }
        if (cavityFirst && told.cavities().size() == 1) {
            return made(told.cavities().keySet().iterator().next());
        }
        List<String> spaces = new ArrayList<>(told.cavities().keySet());
        spaces.addAll(told.rooms().keySet());
        if (spaces.size() == 1) {
            return made(spaces.get(0));
        }
        if (spaces.isEmpty() && told.trailers().size() == 1) {
            return made(told.trailers().keySet().iterator().next());
        }
        spaces.addAll(told.trailers().keySet());
        troubles.wrong(
                placed.path(),
                "doesn't say what it is in",
                spaces.isEmpty()
                        ? "Tell a cavity or a room first."
                        : "Write in: " + spaces.get(0) + ", or another space.");
        return Optional.empty();
    }

    /** Ids of the cavities and rooms of a trailer that hold a point. */
    Set<String> holding(String trailer, Vector3D point) {
        Set<String> holding = new LinkedHashSet<>();
        Vector2D place = Vector2D.of(point.getX(), point.getY());
        for (Cavity cavity : cavities.values()) {
            if (cavity.trailer().id().equals(trailer) && cavity.plan().outline().contains(place)) {
                Depths.At depth = Depths.of(cavity).at(place);
                double z = point.getZ();
                if (z >= depth.low().valueMm() && z <= depth.high().valueMm()) {
                    holding.add(cavity.id());
                }
            }
        }
        for (Room room : rooms.values()) {
            if (room.trailer().id().equals(trailer) && inRoom(room, place, point.getZ())) {
                holding.add(room.id());
            }
        }
        return holding;
    }

    private static boolean inRoom(Room room, Vector2D place, double z) {
        if (!room.plan().outline().contains(place) || z < room.floor().valueMm()) {
            return false;
        }
        var at = Map.of(
                Axis.X, Span.at(Stack.constant(place.getX())),
                Axis.Y, Span.at(Stack.constant(place.getY())));
        return room.ceiling()
                .map(ceiling -> z <= ceiling.nearest(false, at).valueMm())
                .orElse(true);
    }
}
