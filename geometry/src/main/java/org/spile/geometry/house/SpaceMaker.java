package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Stack;

/** Makes trailers, then rooms in them, then cavities over and in those, then the ceilings that the cavities give the rooms. */
final class SpaceMaker {
    private final ToldHouse told;
    private final Names names;
    private final Readings readings;
    private final Troubles troubles;

    SpaceMaker(ToldHouse told, Names names, Readings readings, Troubles troubles) {
        this.told = told;
        this.names = names;
        this.readings = readings;
        this.troubles = troubles;
    }

    void into(Map<String, Trailer> trailers, Map<String, Room> rooms, Map<String, Cavity> cavities) {
        TrailerMaker maker = new TrailerMaker(readings, troubles);
        for (Map.Entry<String, ToldTrailer> entry : told.trailers().entrySet()) {
            maker.of(entry.getValue()).ifPresent(trailer -> trailers.put(entry.getKey(), trailer));
        }
        if (told.trailers().isEmpty()) {
            trailers.put(House.ASSUMED_TRAILER, maker.assumed(told));
        }
        for (Map.Entry<String, ToldRoom> entry : told.rooms().entrySet()) {
            room(entry.getValue(), trailers).ifPresent(room -> rooms.put(entry.getKey(), room));
        }
        for (Map.Entry<String, ToldCavity> entry : told.cavities().entrySet()) {
            cavity(entry.getValue(), trailers, rooms).ifPresent(cavity -> cavities.put(entry.getKey(), cavity));
        }
        Map<String, List<Surface.Patch>> ceilings = new LinkedHashMap<>();
        for (Cavity cavity : cavities.values()) {
            if (cavity.hasCeiling()) {
                Surface.Patch patch = new Surface.Patch(
                        cavity.plan().extent(Axis.X),
                        cavity.plan().extent(Axis.Y),
                        cavity.lower().bare());
                ceilings.computeIfAbsent(cavity.over().orElseThrow().id(), id -> new ArrayList<>())
                        .add(patch);
            }
        }
        ceilings.forEach((id, patches) -> rooms.computeIfPresent(id, (key, room) -> room.under(patches)));
    }

    private Optional<Trailer> trailer(Optional<String> in, String path, Map<String, Trailer> trailers) {
        if (in.isPresent()) {
            if (!told.trailers().containsKey(in.get())) {
                names.missing(path + ".in", in.get(), told.trailers().keySet(), "a trailer", troubles);
            }
            return Optional.ofNullable(trailers.get(in.get()));
        }
        if (told.trailers().size() > 1) {
            troubles.wrong(
                    path,
                    "doesn't say which trailer it is in",
                    "Write in: " + told.trailers().keySet().iterator().next() + ", or another trailer.");
            return Optional.empty();
        }
        return trailers.values().stream().findFirst();
    }

    private Optional<Room> room(ToldRoom room, Map<String, Trailer> trailers) {
        Optional<Trailer> trailer = trailer(room.placed().in(), room.placed().path(), trailers);
        if (trailer.isEmpty()) {
            return Optional.empty();
        }
        Optional<Plan> plan = new PlanPlacing(readings, troubles)
                .plan(room.placed(), trailer.get().enclosure());
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        Stack floor = readings.of(room.floor());
        Optional<Slope> own = room.ceiling()
                .flatMap(surface ->
                        new SurfaceReader(readings, troubles).upright(surface, Room.sides(plan.get()), floor));
        Optional<Slope> upper = own.or(trailer.get()::under);
        List<ToldLayer> linings =
                own.isPresent() ? room.ceiling().map(ToldSurface::linings).orElse(List.of()) : List.of();
        Optional<Slope> lined = upper.map(slope -> slope.isLevel()
                ? slope.offset(readings.of(linings), -1)
                : slope.over(plan.get().extent(slope.along())).offset(readings.of(linings), -1));
        return Optional.of(new Room(room, trailer.get(), plan.get(), floor, upper, lined, List.of()));
    }

    private Optional<Cavity> cavity(ToldCavity cavity, Map<String, Trailer> trailers, Map<String, Room> rooms) {
        String path = cavity.placed().path();
        if (cavity.over().isPresent()) {
            String id = cavity.over().get();
            if (!told.rooms().containsKey(id)) {
                names.missing(path + ".over", id, told.rooms().keySet(), "a room", troubles);
            }
            return Optional.ofNullable(rooms.get(id)).flatMap(room -> cavity(cavity, room, Optional.of(room)));
        }
        Optional<Room> room = cavity.placed().in().flatMap(id -> Optional.ofNullable(rooms.get(id)));
        if (room.isPresent()) {
            return cavity(cavity, room.get(), Optional.empty());
        }
        if (cavity.placed().in().filter(told.rooms()::containsKey).isPresent()) {
            return Optional.empty();
        }
        return trailer(cavity.placed().in(), path, trailers)
                .flatMap(trailer -> new CavityMaker(
                                readings,
                                troubles,
                                cavity,
                                trailer,
                                Optional.empty(),
                                Optional.empty(),
                                trailer.enclosure())
                        .cavity());
    }

    private Optional<Cavity> cavity(ToldCavity cavity, Room room, Optional<Room> over) {
        return new CavityMaker(readings, troubles, cavity, room.trailer(), Optional.of(room), over, room.enclosure())
                .cavity();
    }
}
