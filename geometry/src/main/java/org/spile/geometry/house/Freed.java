package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A told house with one unit freed: what joins it, stands on it or hangs from it, and what runs from or to any of these, is
 * left out, with what sits in such runs; the unit is placed by the coordinates of its middle, its height as told.
 */
final class Freed {
    private final ToldHouse told;
    private final UnitPlace unit;
    private final Set<String> gone = new LinkedHashSet<>();

    Freed(ToldHouse told, UnitPlace unit) {
        this.told = told;
        this.unit = unit;
        gone.add(unit.id());
        int before = 0;
        while (gone.size() > before) {
            before = gone.size();
            sweep();
        }
        gone.remove(unit.id());
    }

    private void sweep() {
        told.units().forEach((id, other) -> {
            boolean carried = !other.joins().isEmpty() && gone.contains(Units.hostOf(other));
            carried |= Stream.concat(other.hungFrom().stream(), other.standsOn().stream())
                    .anyMatch(gone::contains);
            if (carried && !id.equals(unit.id())) {
                gone.add(id);
            }
        });
        told.movers().forEach((id, mover) -> {
            if (gone.contains(mover.rides())) {
                gone.add(id);
            }
        });
        told.runs().forEach((id, run) -> way(id, run.from(), run.to(), run.stations()));
        told.lines().forEach((id, line) -> way(id, line.from(), line.to(), line.stations()));
    }

    private void way(String id, ToldEnd from, ToldEnd to, List<ToldStation> stations) {
        if (gone.contains(thing(from)) || gone.contains(thing(to))) {
            gone.add(id);
            stations.forEach(station -> gone.addAll(station.through()));
        }
    }

    private static String thing(ToldEnd end) {
        return end.name().split("\\.", 2)[0];
    }

    /** The paths of what is left out, in the order of the file. */
    List<String> leftOut() {
        List<String> paths = new ArrayList<>();
        told.units()
                .values()
                .forEach(other -> note(other.placed().id(), other.placed().path(), paths));
        told.movers()
                .values()
                .forEach(other -> note(other.placed().id(), other.placed().path(), paths));
        told.terminals()
                .values()
                .forEach(other -> note(other.placed().id(), other.placed().path(), paths));
        told.runs().values().forEach(run -> note(run.id(), run.path(), paths));
        told.lines().values().forEach(line -> note(line.id(), line.path(), paths));
        return paths;
    }

    private void note(String id, String path, List<String> paths) {
        if (gone.contains(id)) {
            paths.add(path);
        }
    }

    ToldHouse house() {
        Map<String, ToldUnit> units = without(told.units());
        units.replace(unit.id(), byCoordinates(unit.told()));
        return new ToldHouse(
                told.title(),
                told.project(),
                told.trailers(),
                told.rooms(),
                told.cavities(),
                told.fixtures(),
                without(told.movers()),
                units,
                without(told.terminals()),
                without(told.runs()),
                without(told.lines()),
                told.masses(),
                told.materials(),
                told.climate(),
                told.limits(),
                told.stances(),
                told.situations(),
                told.options());
    }

    private <T> Map<String, T> without(Map<String, T> things) {
        Map<String, T> kept = new LinkedHashMap<>(things);
        kept.keySet().removeAll(gone);
        return kept;
    }

    private ToldUnit byCoordinates(ToldUnit u) {
        Placed p = u.placed();
        Vector3D middle = unit.stood().shape().body().bounds().middle();
        List<FaceDistance> at = new ArrayList<>();
        at.add(coordinate(p.path(), "x", middle.getX()));
        at.add(coordinate(p.path(), "y", middle.getY()));
        p.at().stream().filter(upright(unit.stood().in())).forEach(at::add);
        Placed placed =
                new Placed(p.path(), p.id(), p.title(), p.in(), at, p.sizes(), p.turned(), p.bodies(), p.mass());
        return new ToldUnit(
                placed,
                u.blows(),
                u.hungFrom(),
                u.standsOn(),
                u.joins(),
                u.layers(),
                u.layersWithin(),
                u.voidMm(),
                u.clearance(),
                u.service(),
                u.spigots(),
                u.ports(),
                u.fan(),
                u.cooling(),
                u.heating());
    }

    /** Whether a distance says how high a thing is. */
    static Predicate<FaceDistance> upright(Enclosure in) {
        return distance -> distance.face().equals("z")
                || in.face(distance.face())
                        .filter(face -> face.axis() == org.spile.geometry.house.spot.Axis.Z)
                        .isPresent();
    }

    static FaceDistance coordinate(String path, String axis, double mm) {
        Reading reading = Reading.of(path + ".at." + axis, Kind.LENGTH, mm);
        return new FaceDistance(reading.path(), axis, reading, java.util.Optional.empty(), false);
    }
}
