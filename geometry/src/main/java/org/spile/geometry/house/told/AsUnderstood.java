package org.spile.geometry.house.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A house said back, a sentence a thing, so that a wrong side or a size taken the wrong way shows before a wrong answer.
 *
 * <p>Lengths in mm whatever they were typed in. Sides are told as the trailer has them, not as the unit does: a unit that
 * blows aft has its own left on the trailer's right.
 */
public final class AsUnderstood {
    private AsUnderstood() {}

    /** A sentence for each room, cavity, fixture, mover, unit, terminal, run and line, in the order of the file. */
    public static List<String> of(ToldHouse house) {
        var sentences = new ArrayList<String>();
        house.rooms().values().forEach(room -> sentences.add(sentence(room.placed(), List.of())));
        house.cavities().values().forEach(cavity -> sentences.add(sentence(cavity.placed(), cavity(cavity))));
        house.fixtures()
                .values()
                .forEach(fixture -> sentences.add(sentence(fixture.placed(), List.of(fixture.kind()))));
        house.movers().values().forEach(mover -> sentences.add(sentence(mover.placed(), mover(mover))));
        house.units()
                .values()
                .forEach(unit -> sentences.add(joined(
                        unit.placed(), SizeWords.of(unit.placed().sizes(), Facing.of(unit.blows())), unit(unit))));
        house.terminals().values().forEach(terminal -> sentences.add(sentence(terminal.placed(), terminal(terminal))));
        house.runs().values().forEach(run -> sentences.add(path(run.id(), run.from(), run.to(), run.stations())));
        house.lines().values().forEach(line -> sentences.add(path(line.id(), line.from(), line.to(), line.stations())));
        return List.copyOf(sentences);
    }

    private static String sentence(Placed placed, List<String> further) {
        return joined(placed, SizeWords.of(placed.sizes(), Facing.FORWARD), further);
    }

    private static String joined(Placed placed, List<String> sizes, List<String> further) {
        String in = placed.in().map(id -> " in " + id).orElse("");
        var parts = new ArrayList<String>();
        if (!sizes.isEmpty()) {
            parts.add(String.join(", ", sizes));
        }
        parts.addAll(further);
        if (!placed.at().isEmpty()) {
            parts.add(String.join(
                    ", ", placed.at().stream().map(DistanceWords::of).toList()));
        }
        placed.turned().ifPresent(turn -> parts.add("turned " + SizeWords.number(turn) + " deg, nose to the left"));
        return placed.id() + in + (parts.isEmpty() ? "." : ": " + String.join("; ", parts) + ".");
    }

    private static List<String> cavity(ToldCavity cavity) {
        var parts = new ArrayList<String>();
        cavity.over().ifPresent(room -> parts.add("over " + room));
        cavity.below()
                .flatMap(ToldSurface::at)
                .ifPresent(at ->
                        parts.add((cavity.belowIsCeiling() ? "ceiling at " : "floor at ") + SizeWords.number(at)));
        return parts;
    }

    private static List<String> mover(ToldMover mover) {
        var parts = new ArrayList<String>();
        mover.slides().forEach(slide -> parts.add("slides " + slide.way() + " by " + SizeWords.number(slide.travel())));
        mover.hinge()
                .ifPresent(hinge -> parts.add("hinged at its " + hinge.edge() + " edge, opens " + hinge.opens() + " by "
                        + SizeWords.number(hinge.by()) + " deg"));
        return parts;
    }

    private static List<String> unit(ToldUnit unit) {
        Facing facing = Facing.of(unit.blows());
        var parts = new ArrayList<String>();
        parts.add("blows " + unit.blows());
        unit.service()
                .values()
                .forEach(room -> parts.add(SizeWords.number(room.out()) + " free " + facing.where(room.face()) + " for "
                        + room.purpose()));
        unit.spigots()
                .values()
                .forEach(spigot -> parts.add("spigot " + spigot.id() + " " + facing.where(spigot.face())));
        unit.ports().values().forEach(port -> parts.add("port " + port.id() + " " + facing.where(port.face())));
        if (!unit.hungFrom().isEmpty()) {
            parts.add("hangs from " + String.join(" and ", unit.hungFrom()));
        }
        if (!unit.standsOn().isEmpty()) {
            parts.add("stands on " + String.join(" and ", unit.standsOn()));
        }
        if (!unit.joins().isEmpty()) {
            parts.add("joins " + unit.joins());
        }
        return parts;
    }

    private static List<String> terminal(ToldTerminal terminal) {
        return terminal.face().isEmpty()
                ? List.of(terminal.kind())
                : List.of(terminal.kind(), "in the " + terminal.face() + " face");
    }

    private static String path(String id, ToldEnd from, ToldEnd to, List<ToldStation> stations) {
        List<String> legs = stations.stream().map(AsUnderstood::leg).toList();
        String ends = id + " from " + from.name() + " to " + to.name();
        return legs.isEmpty() ? ends + ", to be routed." : ends + ": " + String.join("; ", legs) + ".";
    }

    private static String leg(ToldStation station) {
        var parts = new ArrayList<String>();
        for (Map.Entry<String, Optional<Reading>> way : station.ways().entrySet()) {
            String far = way.getValue().map(SizeWords::number).orElse("the rest");
            parts.add(way.getKey() + " " + far);
        }
        if (!station.at().isEmpty()) {
            String where = station.in().isEmpty() ? "" : " in " + station.in();
            List<String> ends = station.at().stream().map(DistanceWords::of).toList();
            parts.add("until " + String.join(", ", ends) + where);
        }
        station.section().ifPresent(section -> parts.add("section " + SizeWords.of(section)));
        if (!station.through().isEmpty()) {
            parts.add("through " + String.join(" and ", station.through()));
        }
        if (!station.parts().isEmpty()) {
            parts.add("parts at its " + station.parts());
        }
        return String.join(", ", parts);
    }
}
