package org.spile.geometry.house;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.kernel.measure.Stack;

/** Finds what runs and lines start from and end at. */
final class PathEnds {
    private final Paths paths;
    private final Spaces spaces;
    private final Units units;
    private final Terminals terminals;
    private final Map<String, Stood> fixtures;
    private final Names names;
    private final Readings readings;
    private final Troubles troubles;

    PathEnds(
            Paths paths,
            Spaces spaces,
            Units units,
            Terminals terminals,
            Map<String, Stood> fixtures,
            Names names,
            Readings readings,
            Troubles troubles) {
        this.paths = paths;
        this.spaces = spaces;
        this.units = units;
        this.terminals = terminals;
        this.fixtures = fixtures;
        this.names = names;
        this.readings = readings;
        this.troubles = troubles;
    }

    /** A spigot, a port, a terminal's opening or a takeoff, in its own trailer's frame. */
    Optional<Opening> opening(ToldEnd end, Course course) {
        if (end.onRun()) {
            return takeoff(end);
        }
        if (terminals.knows(end.name())) {
            Optional<TerminalPlace> place =
                    Optional.ofNullable(terminals.places().get(end.name()));
            if (place.isEmpty() && troubles.none()) {
                troubles.wrong(end.path(), end.name() + " sits in a duct", "Name it in a through, and end at a place.");
            }
            return place.map(TerminalPlace::opening);
        }
        String unit = end.name().split("\\.", 2)[0];
        if (units.knows(unit)) {
            return units.opening(end.name(), end.path());
        }
        missing(end, course);
        return Optional.empty();
    }

    /** Where a path goes, in that thing's own trailer's frame. */
    Optional<Target> target(ToldEnd end, Course course, Optional<Opening> start) {
        if (!end.onRun() && end.name().equals("outside")) {
            return start.flatMap(
                    opening -> Optional.ofNullable(spaces.trailers().get(opening.trailer()))
                            .map(Target.Outside::new));
        }
        Stood fixture = end.onRun() ? null : fixtures.get(end.name());
        if (fixture != null && !course.duct()) {
            if (!start.map(opening -> opening.trailer().equals(fixture.in().trailer()))
                    .orElse(true)) {
                troubles.wrong(
                        end.path(),
                        end.name() + " is on " + fixture.in().trailer() + ", but the path starts elsewhere",
                        "A line to another trailer ends at a port of a unit there.");
                return Optional.empty();
            }
            return Optional.of(new Target.IntoBox(fixture, fixture.own().middle()));
        }
        return opening(end, course).map(opening -> new Target.AtOpening(opening, opening));
    }

    private void missing(ToldEnd end, Course course) {
        if (!course.duct() && names.path(end.name()).startsWith("fixtures.")) {
            return;
        }
        Set<String> wanted = new LinkedHashSet<>(units.ids());
        wanted.addAll(terminals.ids());
        if (!course.duct()) {
            wanted.addAll(fixtures.keySet());
            wanted.add("outside");
        }
        names.missing(end.path(), end.name(), wanted, "something a path can end at", troubles);
    }

    /** The side of another run at a place along it; its own size is the takeoff's to say. */
    private Optional<Opening> takeoff(ToldEnd end) {
        if (!paths.ids().contains(end.name())) {
            names.missing(end.path(), end.name(), paths.ids(), "a run", troubles);
            return Optional.empty();
        }
        Optional<Pathway> main = paths.get(end.name());
        Optional<Way> side = Way.outOf(end.side());
        if (side.isEmpty() || end.after().isEmpty()) {
            troubles.wrong(
                    end.path(),
                    "doesn't say where on " + end.name() + " it joins",
                    "Write {run: " + end.name() + ", after: 120, side: left}.");
            return Optional.empty();
        }
        if (main.isEmpty()) {
            return Optional.empty();
        }
        double after = readings.now(end.after().get()).value();
        Optional<Pathway.Along> along = main.get().at(after);
        if (along.isEmpty() || along.get().leg().way().axis() == side.get().axis()) {
            troubles.wrong(
                    end.path(),
                    along.isEmpty()
                            ? end.name() + " is shorter than " + AxisPlacing.number(after)
                            : end.side() + " is no side of " + end.name() + " there",
                    "Name a side along the leg, within its length.");
            return Optional.empty();
        }
        Leg leg = along.get().leg();
        // The reading moves the place along the leg; the share of the leg is where it nominally is.
        Spot middle = leg.from().toward(leg.to(), along.get().share());
        Stack reading = readings.of(end.after().get());
        middle = middle.plus(leg.way().unit(), reading.minus(reading.valueMm()));
        Stack half = leg.start().size(side.get().axis()).times(0.5);
        Axis wide = OnFace.wide(side.get());
        return Optional.of(new Opening(
                end.path(),
                main.get().course().path(),
                end.side() + " side of " + main.get().course().title(),
                leg.trailer(),
                middle.plus(side.get().unit(), half),
                side.get().unit(),
                wide.unit(),
                Optional.empty(),
                Optional.empty(),
                false));
    }
}
