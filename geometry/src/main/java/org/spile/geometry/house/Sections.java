package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** The clear sections along a path: where it starts, where a leg ends, and how a transition lies. */
final class Sections {
    private final Course course;
    private final Readings readings;
    private final Troubles troubles;
    private final Stack within;

    Sections(Course course, Readings readings, Troubles troubles) {
        this.course = course;
        this.readings = readings;
        this.troubles = troubles;
        this.within = readings.of(course.layers().subList(0, course.within())).times(2);
    }

    /**
     * The section that the first leg starts with.
     *
     * @param alone a first station that is a section alone
     */
    Optional<Cross> first(Opening start, Optional<ToldStation> alone, Way way, ToldStation station) {
        Optional<ToldSection> told = alone.flatMap(ToldStation::section).or(course::section);
        if (told.isPresent()) {
            return told(told.get(), Optional.empty(), way.axis());
        }
        Optional<Cross> neck = Cross.of(start);
        if (neck.isEmpty()) {
            return none(
                    course.path() + ".path",
                    "nothing says the section it starts with: " + start.title() + " has no size",
                    "Write it as a first station: {wide: 200, high: 120}.");
        }
        Way out = Way.nearest(start.outward());
        if (out != way) {
            return none(
                    station.path(),
                    "starts " + way.word() + ", but " + start.title() + " looks " + out.word(),
                    "Write a first leg " + out.word() + ", then the bend.");
        }
        return neck;
    }

    /** The section that a leg ends with: as told; on the last leg that of the neck it meets; else as it started. */
    Optional<Cross> end(Cross from, ToldStation station, boolean last, Target target) {
        Optional<Cross> told = station.section().isPresent()
                ? told(station.section().get(), Optional.of(from), from.main())
                : Optional.of(from);
        if (told.isEmpty() || !last || !course.duct() || !(target instanceof Target.AtOpening at)) {
            return told;
        }
        Optional<Cross> neck = at.neck();
        if (neck.isEmpty()) {
            return told;
        }
        if (neck.get().main() != from.main()) {
            Way into = Way.nearest(at.opening().outward()).opposite();
            return none(
                    station.path(),
                    "arrives square to " + at.title() + ", which is entered " + into.word(),
                    "Let the last leg go " + into.word() + ".");
        }
        if (station.section().isPresent() && !told.get().same(neck.get())) {
            return none(
                    station.path(),
                    "arrives with " + words(told.get()) + " at " + at.title() + ", whose neck is " + words(neck.get()),
                    "Leave the section out: the last leg is the transition to it.");
        }
        return neck;
    }

    private static String words(Cross cross) {
        double first = cross.size(Cross.first(cross.main())).valueMm();
        double second = cross.size(Cross.second(cross.main())).valueMm();
        return cross.form() == Cross.Form.ROUND
                ? "round " + AxisPlacing.number(first)
                : AxisPlacing.number(first) + " x " + AxisPlacing.number(second);
    }

    private Optional<Cross> told(ToldSection told, Optional<Cross> before, Axis main) {
        if (told.round().isPresent()) {
            Stack size = clear(told.round().get());
            return positive(told, Cross.of(main, size, size, Cross.Form.ROUND));
        }
        Axis first = Cross.first(main);
        Axis second = Cross.second(main);
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        before.ifPresent(cross -> sizes.putAll(cross.sizes()));
        told.wide().ifPresent(size -> sizes.put(first, clear(size)));
        Optional<Reading> up = main == Axis.Z ? told.longMm().or(told::high) : told.high();
        up.ifPresent(size -> sizes.put(second, clear(size)));
        if (!sizes.containsKey(first) || !sizes.containsKey(second)) {
            String missing = !sizes.containsKey(first) ? "wide" : main == Axis.Z ? "long" : "high";
            return none(told.path(), "the section has no " + missing, "Write " + missing + ":.");
        }
        Cross.Form form = told.oval() ? Cross.Form.OVAL : Cross.Form.RECTANGULAR;
        return positive(told, new Cross(main, sizes, form));
    }

    private Optional<Cross> positive(ToldSection told, Cross cross) {
        if (cross.positive()) {
            return Optional.of(cross);
        }
        return none(told.path(), "nothing is left of its clear section, " + words(cross), "Sections are clear sizes.");
    }

    private Stack clear(Reading typed) {
        return readings.of(typed).minus(within);
    }

    /** A transition that keeps a side moves its middle line. */
    Spot flush(Spot end, Cross from, Cross to, ToldStation station) {
        Optional<Way> side = Way.outOf(station.flush());
        if (side.isEmpty() || !from.sizes().containsKey(side.get().axis())) {
            if (!station.flush().isEmpty()) {
                troubles.wrong(
                        station.path() + ".flush",
                        "\"" + station.flush() + "\" is no side of this leg",
                        "A side lies along the leg; the middle is kept where none is named.");
            }
            return end;
        }
        Axis axis = side.get().axis();
        Stack shift =
                from.size(axis).minus(to.size(axis)).times(0.5 * side.get().sign());
        return end.with(axis, end.get(axis).plus(shift));
    }

    /** Radius of the corner before a leg; nothing where it is mitred. */
    Optional<Stack> bend(ToldStation station, Cross from) {
        if (station.bend().isPresent()) {
            return station.bend().map(readings::of);
        }
        String kind = station.bendKind().isEmpty() ? course.bendKind() : station.bendKind();
        boolean round = from.form() == Cross.Form.ROUND;
        if (kind.equals("radius") || (kind.isEmpty() && round && course.duct())) {
            Stack size = from.size(Cross.second(from.main()));
            return Optional.of(course.radius().map(readings::of).orElse(size));
        }
        return Optional.empty();
    }

    private <T> Optional<T> none(String path, String says, String advice) {
        troubles.wrong(path, says, advice);
        return Optional.empty();
    }
}
