package org.spile.analysis.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldHinge;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldLimits;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldProject;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.house.told.ToldService;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** What a house made by hand was told: units with what their makers ask for, rooms, a clearance. */
final class Tell {
    private final Map<String, ToldUnit> units = new LinkedHashMap<>();
    private final Map<String, ToldRoom> rooms = new LinkedHashMap<>();
    private Optional<Reading> clearance = Optional.empty();

    static Tell house() {
        return new Tell();
    }

    Tell clearance(double mm) {
        clearance = Optional.of(mm("limits.clearance", mm));
        return this;
    }

    Tell room(String id, double headroomMm) {
        return room(id, headroomMm, Map.of());
    }

    private Tell room(String id, double headroomMm, Map<String, ToldOpening> openings) {
        rooms.put(
                id,
                new ToldRoom(
                        placed("rooms." + id, id),
                        mm("rooms." + id + ".floor", 0),
                        Optional.empty(),
                        Optional.of(mm("rooms." + id + ".headroom", headroomMm)),
                        openings,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        return this;
    }

    /** A unit whose maker asks for room in front of some faces, and for a depth of cavity if it is positive. */
    Tell unit(String id, double voidMm, Map<String, Double> faces) {
        String path = "units." + id;
        Map<String, Reading> asked = new LinkedHashMap<>();
        faces.forEach((face, mm) -> asked.put(face, mm(path + ".clearance." + face, mm)));
        return unit(id, voidMm > 0 ? Optional.of(mm(path + ".void", voidMm)) : Optional.empty(), asked, Map.of());
    }

    /** A unit that is served at a face. */
    Tell served(String id, String purpose, String face) {
        String path = "units." + id + ".service." + purpose;
        ToldService service = new ToldService(path, purpose, face, mm(path + ".out", 0), ToldSizes.none(), List.of());
        return unit(id, Optional.empty(), Map.of(), Map.of(purpose, service));
    }

    /** A hinged door in a room. */
    Tell door(String room, String id) {
        String path = "rooms." + room + ".openings." + id;
        ToldHinge hinge = new ToldHinge(path + ".hinge", "left", "forward", mm(path + ".hinge.by", 90));
        ToldOpening opening = new ToldOpening(
                placed(path, id),
                "rear",
                "",
                Optional.of(hinge),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        room(room, 1000, Map.of(id, opening));
        return this;
    }

    private Tell unit(
            String id, Optional<Reading> voidMm, Map<String, Reading> asked, Map<String, ToldService> services) {
        units.put(
                id,
                new ToldUnit(
                        placed("units." + id, id),
                        "forward",
                        List.of(),
                        List.of(),
                        "",
                        List.of(),
                        0,
                        voidMm,
                        asked,
                        services,
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty()));
        return this;
    }

    ToldHouse done() {
        ToldLimits limits = ToldLimits.only(clearance);
        return new ToldHouse(
                "by hand",
                new ToldProject("", "", ""),
                Map.of(),
                rooms,
                Map.of(),
                Map.of(),
                Map.of(),
                units,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                limits,
                Map.of(),
                Map.of(),
                Map.of());
    }

    static Reading mm(String path, double mm) {
        return Reading.of(path, Kind.LENGTH, mm);
    }

    private static Placed placed(String path, String id) {
        return new Placed(
                path,
                id,
                id,
                Optional.empty(),
                List.of(),
                ToldSizes.none(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }
}
