package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Works out runs and lines, each after the run it takes off from.
 *
 * <p>A what-if hands over those it had before: what goes the same way keeps its shapes, the dearest part of a house.
 */
final class Paths {
    private final Map<String, Course> courses = new LinkedHashMap<>();
    private final Map<String, ToldRun> runs = new LinkedHashMap<>();
    private final Map<String, Optional<Pathway>> made = new LinkedHashMap<>();
    private final Set<String> underWay = new LinkedHashSet<>();
    private final Spaces spaces;
    private final Docking docking;
    private final Terminals terminals;
    private final PathEnds ends;
    private final Readings readings;
    private final Troubles troubles;
    private final Map<String, Pathway> before = new HashMap<>();

    Paths(
            ToldHouse told,
            Spaces spaces,
            Docking docking,
            Units units,
            Terminals terminals,
            Map<String, Stood> fixtures,
            Names names,
            Readings readings,
            List<Pathway> before,
            Troubles troubles) {
        before.forEach(way -> this.before.put(way.course().path(), way));
        this.spaces = spaces;
        this.docking = docking;
        this.terminals = terminals;
        this.readings = readings;
        this.troubles = troubles;
        told.runs().values().forEach(run -> {
            courses.put(run.id(), Course.of(run));
            runs.put(run.path(), run);
        });
        told.lines().values().forEach(line -> courses.put(line.id(), Course.of(line)));
        this.ends = new PathEnds(this, spaces, units, terminals, fixtures, names, readings, troubles);
    }

    /** Those that could be worked out, in the order of the file. */
    List<Pathway> all() {
        List<Pathway> all = new ArrayList<>();
        courses.keySet().forEach(id -> get(id).ifPresent(all::add));
        return all;
    }

    Set<String> ids() {
        return courses.keySet();
    }

    Optional<Pathway> get(String id) {
        Optional<Pathway> there = made.get(id);
        if (there != null) {
            return there;
        }
        Course course = courses.get(id);
        if (!underWay.add(id)) {
            troubles.wrong(
                    course.path() + ".from",
                    "takes off from itself, in a circle: " + String.join(", ", underWay),
                    "One of them has to start at a spigot.");
            return Optional.empty();
        }
        Optional<Pathway> way = made(course);
        underWay.remove(id);
        made.put(id, way);
        return way;
    }

    private Optional<Pathway> made(Course course) {
        Optional<Opening> start = ends.opening(course.from(), course);
        Optional<Target> own = ends.target(course.to(), course, start);
        if (start.isEmpty() || own.isEmpty()) {
            return Optional.empty();
        }
        Rigid otherToRun = Rigid.NONE;
        if (!own.get().trailer().equals(start.get().trailer())) {
            Optional<Rigid> here = docking.toSite(start.get().trailer());
            Optional<Rigid> there = docking.toSite(own.get().trailer());
            if (here.isEmpty() || there.isEmpty()) {
                troubles.wrong(
                        course.path() + ".to",
                        own.get().title() + " is on " + own.get().trailer() + ", which never docks to "
                                + start.get().trailer(),
                        "Give that trailer a dock:.");
                return Optional.empty();
            }
            otherToRun = there.get().then(here.get().inverse());
        }
        Target target = seen(own.get(), otherToRun);
        Optional<List<Leg>> legs = new Walk(course, start.get(), target, spaces, readings, troubles).legs();
        if (legs.isEmpty()) {
            return Optional.empty();
        }
        Optional<TerminalPlace> terminal =
                Optional.ofNullable(terminals.places().get(course.to().name()));
        new Arrival(course, target, terminal, readings, troubles).check(legs.get());
        return parted(course, legs.get(), target, otherToRun)
                .flatMap(parts -> shaped(course, start.get(), target, parts))
                .map(this::ruled);
    }

    /** The same, after telling what is wrong with its takeoffs and with what stands into it. */
    private Pathway ruled(Pathway way) {
        Course course = way.course();
        Leg first = way.legs().get(0);
        Leg last = way.legs().get(way.legs().size() - 1);
        takeoff(course.from(), first, first.start());
        takeoff(course.to(), last, last.end());
        Optional.ofNullable(runs.get(course.path()))
                .ifPresent(run -> new JointRules(way, run, readings, troubles).check());
        return way;
    }

    private void takeoff(ToldEnd end, Leg own, Cross opening) {
        if (end.onRun()) {
            get(end.name())
                    .ifPresent(main -> main.at(
                                    readings.now(end.after().orElseThrow()).value())
                            .ifPresent(along -> new TakeoffRules(end, main, troubles).check(along, own, opening)));
        }
    }

    private static Target seen(Target own, Rigid otherToRun) {
        return own instanceof Target.AtOpening at
                ? new Target.AtOpening(at.own().moved(otherToRun), at.own())
                : own;
    }

    private Optional<List<Leg>> parted(Course course, List<Leg> legs, Target target, Rigid otherToRun) {
        Optional<Leg> piece = legs.stream().filter(Leg::comesOut).findFirst();
        if (piece.isEmpty()) {
            return Optional.of(legs);
        }
        if (target.trailer().equals(legs.get(0).trailer())) {
            troubles.wrong(
                    piece.get().path() + ".parts",
                    course.id() + " starts and ends on " + target.trailer(),
                    "Only a path to another trailer parts.");
            return Optional.empty();
        }
        return new Parting(otherToRun, target, troubles).parted(legs);
    }

    private Optional<Pathway> shaped(Course course, Opening start, Target target, List<Leg> legs) {
        Stack wall = readings.of(course.layers());
        Pathway known = before.get(course.path());
        if (known != null && known.legs().equals(legs) && known.wall().equals(wall)) {
            return Optional.of(new Pathway(course, start, target, legs, known.shapes(), wall));
        }
        List<LegShape> shapes = new ArrayList<>();
        new LegShapes(legs, wall, troubles).shapes().forEach(shape -> shape.ifPresent(shapes::add));
        return shapes.size() == legs.size()
                ? Optional.of(new Pathway(course, start, target, legs, shapes, wall))
                : Optional.empty();
    }
}
