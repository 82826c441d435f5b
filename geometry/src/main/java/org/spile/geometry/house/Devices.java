package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Places the units that sit in a duct: evenly spaced along the middle line of their leg, one alone in its middle; their
 * length lies along it.
 */
final class Devices {
    private final Units units;
    private final Terminals terminals;
    private final Spaces spaces;
    private final Names names;
    private final Readings readings;
    private final Troubles troubles;
    private final Map<String, UnitPlace> places = new LinkedHashMap<>();
    private final Map<String, String> runs = new LinkedHashMap<>();

    Devices(
            List<Pathway> paths,
            Units units,
            Terminals terminals,
            Spaces spaces,
            Names names,
            Readings readings,
            Troubles troubles) {
        this.units = units;
        this.terminals = terminals;
        this.spaces = spaces;
        this.names = names;
        this.readings = readings;
        this.troubles = troubles;
        for (Pathway path : paths) {
            path.legs().forEach(leg -> inLeg(path, leg));
        }
    }

    /** Units that sit in a duct, in the order of the paths. */
    List<UnitPlace> places() {
        return new ArrayList<>(places.values());
    }

    /** Path of the run that each device by its id sits in. */
    Map<String, String> runs() {
        return runs;
    }

    private void inLeg(Pathway path, Leg leg) {
        List<String> through = leg.station().through();
        for (int i = 0; i < through.size(); i++) {
            String id = through.get(i);
            if (!units.knows(id) && !terminals.knows(id)) {
                List<String> wanted = new ArrayList<>(units.ids());
                wanted.addAll(terminals.ids());
                names.missing(leg.path() + ".through", id, wanted, "something that sits in a duct", troubles);
                continue;
            }
            String before = runs.putIfAbsent(id, path.course().path());
            if (before != null) {
                troubles.wrong(
                        leg.path() + ".through",
                        id + " sits in " + before + " already",
                        "Give each place a device of its own: like: " + id + ".");
            } else if (units.inDuct(id)) {
                placed(units.told(id), leg, (i + 1.0) / (through.size() + 1)).ifPresent(place -> places.put(id, place));
            }
        }
    }

    private Optional<UnitPlace> placed(ToldUnit unit, Leg leg, double share) {
        Spot middle = leg.from().toward(leg.to(), share);
        Axis main = leg.way().axis();
        ToldSizes sizes = unit.placed().sizes();
        Map<Axis, Stack> own = new EnumMap<>(Axis.class);
        sizes.longMm().ifPresent(size -> own.put(main, readings.of(size)));
        sizes.wideMm().or(sizes::roundMm).ifPresent(size -> own.put(Cross.first(main), readings.of(size)));
        sizes.highMm().or(sizes::roundMm).ifPresent(size -> own.put(Cross.second(main), readings.of(size)));
        if (own.size() < Axis.values().length) {
            String word = own.containsKey(main) ? "round, or wide and high" : "long";
            troubles.wrong(unit.placed().path(), "has no " + word, "A unit in a duct is long along it.");
            return Optional.empty();
        }
        Block block = new Block(
                Span.round(middle.x(), own.get(Axis.X)),
                Span.round(middle.y(), own.get(Axis.Y)),
                Span.round(middle.z(), own.get(Axis.Z)));
        Optional<Axis> rod = sizes.roundMm().isPresent() ? Optional.of(main) : Optional.empty();
        Enclosure in = spaces.trailers().get(leg.trailer()).enclosure();
        Stood stood = new Stood(unit.placed(), in, block, Rigid.NONE, rod, Optional.empty(), List.of());
        return Optional.of(new UnitFittings(readings, troubles).fitted(unit, stood, block));
    }
}
