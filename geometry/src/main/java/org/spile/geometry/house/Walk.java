package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Follows a path station by station, in the frame of the trailer where it starts. */
final class Walk {
    private final Course course;
    private final Opening start;
    private final Target target;
    private final Spaces spaces;
    private final Readings readings;
    private final Troubles troubles;
    private final Sections sections;
    private final Stack wall;

    private final List<Leg> legs = new ArrayList<>();
    private final Set<Axis> rested = EnumSet.noneOf(Axis.class);
    private Spot at;

    Walk(Course course, Opening start, Target target, Spaces spaces, Readings readings, Troubles troubles) {
        this.course = course;
        this.start = start;
        this.target = target;
        this.spaces = spaces;
        this.readings = readings;
        this.troubles = troubles;
        this.sections = new Sections(course, readings, troubles);
        this.wall = readings.of(course.layers());
        this.at = start.centre();
    }

    /** Its legs; nothing, and a trouble, if a station can't be followed. */
    Optional<List<Leg>> legs() {
        int first = course.stations().isEmpty() || moves(course.stations().get(0)) ? 0 : 1;
        Optional<ToldStation> opening =
                first == 0 ? Optional.empty() : Optional.of(course.stations().get(0));
        if (first == course.stations().size()) {
            return none(
                    course.path() + ".path", "no station says a way", "Write where it goes: path: [{forward: rest}].");
        }
        for (int i = first; i < course.stations().size(); i++) {
            if (!follow(i, opening)) {
                return Optional.empty();
            }
        }
        return Optional.of(legs);
    }

    private static boolean moves(ToldStation station) {
        return !station.ways().isEmpty() || !station.at().isEmpty();
    }

    private boolean follow(int i, Optional<ToldStation> opening) {
        ToldStation station = course.stations().get(i);
        boolean last = i + 1 == course.stations().size();
        if (!moves(station)) {
            return none(station.path(), "says no way", "Only the first station may be a section alone.")
                    .isPresent();
        }
        Map<Axis, Stack> move = new EnumMap<>(Axis.class);
        if (!ways(station, move)) {
            return false;
        }
        Set<Axis> typed = EnumSet.noneOf(Axis.class);
        station.ways()
                .forEach((word, reading) ->
                        reading.flatMap(r -> Way.named(word)).ifPresent(way -> typed.add(way.axis())));
        Optional<Way> way = main(station, move);
        if (way.isEmpty() || !turnsFairly(station, way.get())) {
            return false;
        }
        Optional<Cross> from = legs.isEmpty()
                ? sections.first(start, opening, way.get(), station)
                : Optional.of(legs.get(legs.size() - 1).end().turned(way.get().axis()));
        Optional<Cross> to = from.flatMap(cross -> sections.end(cross, station, last, target));
        if (to.isEmpty()) {
            return false;
        }
        Optional<Map<Axis, Stack>> ends = places(i, to.get(), way.get());
        if (ends.isEmpty()) {
            return false;
        }
        move.putAll(ends.get());
        fall(way.get(), move);
        Spot end = at;
        for (Map.Entry<Axis, Stack> part : move.entrySet()) {
            end = end.with(part.getKey(), at.get(part.getKey()).plus(part.getValue()));
        }
        end = sections.flush(end, from.get(), to.get(), station);
        Optional<Stack> bend = legs.isEmpty() || legs.get(legs.size() - 1).way() == way.get()
                ? Optional.empty()
                : sections.bend(station, from.get());
        legs.add(new Leg(
                station,
                start.trailer(),
                way.get(),
                at,
                end,
                from.get(),
                to.get(),
                bend,
                Way.outOf(station.flush()),
                typed));
        at = end;
        return true;
    }

    /** How far the ways of a station go; stations that say where they end come later. */
    private boolean ways(ToldStation station, Map<Axis, Stack> move) {
        for (Map.Entry<String, Optional<Reading>> entry : station.ways().entrySet()) {
            Optional<Way> way = Way.named(entry.getKey());
            if (way.isEmpty()) {
                return none(
                                station.path(),
                                "there is no way \"" + entry.getKey() + "\"",
                                "A way is one of " + String.join(", ", Way.words()) + ".")
                        .isPresent();
            }
            Axis axis = way.get().axis();
            if (move.containsKey(axis)) {
                return none(station.path(), "goes two ways along one line", "Write their difference.")
                        .isPresent();
            }
            if (entry.getValue().isPresent()) {
                move.put(
                        axis,
                        readings.of(entry.getValue().get()).times(way.get().sign()));
            } else if (!rest(station, way.get(), move)) {
                return false;
            }
        }
        return true;
    }

    private boolean rest(ToldStation station, Way way, Map<Axis, Stack> move) {
        String path = station.path() + "." + way.word();
        if (!rested.add(way.axis())) {
            return none(path, "rest stands here a second time", "Once it is level with the end nothing is left.")
                    .isPresent();
        }
        Stack left = target.rest(way).minus(at.get(way.axis()));
        double mm = way.sign() * left.valueMm();
        if (mm < -AxisPlacing.SAME_PLACE_MM) {
            return none(
                            path,
                            target.title() + " lies " + AxisPlacing.number(-mm) + " the other way",
                            "Write " + way.opposite().word() + ": rest.")
                    .isPresent();
        }
        move.put(way.axis(), left);
        return true;
    }

    private Optional<Way> main(ToldStation station, Map<Axis, Stack> move) {
        Way best = null;
        double most = 0;
        for (Map.Entry<Axis, Stack> part : move.entrySet()) {
            double far = Math.abs(part.getValue().valueMm());
            boolean goesOn = !legs.isEmpty() && legs.get(legs.size() - 1).way().axis() == part.getKey();
            if (far > most || (far == most && far > 0 && goesOn)) {
                most = far;
                best = Way.of(part.getKey(), part.getValue().valueMm());
            }
        }
        if (best != null || station.at().isEmpty()) {
            return best == null
                    ? none(station.path(), "goes nowhere: nothing is left of it", "Leave it out.")
                    : Optional.of(best);
        }
        return towards(station);
    }

    /** The way to the first place a station names. */
    private Optional<Way> towards(ToldStation station) {
        Optional<Enclosure> in = enclosure(station);
        if (in.isEmpty()) {
            return Optional.empty();
        }
        FaceDistance first = station.at().get(0);
        Optional<Stack> raw = place(in.get(), first, Stack.ZERO, Map.of());
        Optional<Axis> axis = axis(in.get(), first);
        if (raw.isEmpty() || axis.isEmpty()) {
            return none(
                    first.path(),
                    in.get().id() + " has no face \"" + first.face() + "\"",
                    "Its faces: " + String.join(", ", in.get().faces().keySet()) + ".");
        }
        return Optional.of(
                Way.of(axis.get(), raw.get().minus(at.get(axis.get())).valueMm()));
    }

    private Optional<Enclosure> enclosure(ToldStation station) {
        if (station.in().isEmpty()) {
            return none(station.path(), "doesn't say in which space its at: counts", "Write in: and the space.");
        }
        Optional<Enclosure> in = spaces.named(station.in(), station.path() + ".in");
        if (in.isPresent() && !in.get().trailer().equals(start.trailer())) {
            return none(
                    station.path() + ".in",
                    station.in() + " is on " + in.get().trailer() + ", but the path starts on " + start.trailer(),
                    "Say the distance instead.");
        }
        return in;
    }

    private static Optional<Axis> axis(Enclosure in, FaceDistance distance) {
        return AxisPlacing.coordinate(distance)
                .or(() -> in.face(distance.face()).map(Surface::axis));
    }

    /** Where a station's places take the middle line: its near outside face, or the middle of a round one, is there. */
    private Optional<Map<Axis, Stack>> places(int i, Cross end, Way way) {
        ToldStation station = course.stations().get(i);
        Map<Axis, Stack> move = new EnumMap<>(Axis.class);
        if (station.at().isEmpty()) {
            return Optional.of(move);
        }
        Optional<Enclosure> in = enclosure(station);
        if (in.isEmpty()) {
            return Optional.empty();
        }
        Optional<Axis> next =
                i + 1 < course.stations().size() ? next(course.stations().get(i + 1)) : Optional.empty();
        for (FaceDistance distance : station.at()) {
            Optional<Axis> axis = axis(in.get(), distance);
            Stack half = axis.map(a -> half(end, a, next.orElse(way.axis()))).orElse(Stack.ZERO);
            Optional<Stack> place = place(in.get(), distance, half, around(end));
            if (axis.isEmpty() || place.isEmpty()) {
                return none(
                        distance.path(),
                        in.get().id() + " has no face \"" + distance.face() + "\"",
                        "Its faces: " + String.join(", ", in.get().faces().keySet()) + ".");
            }
            move.put(axis.get(), place.get().minus(at.get(axis.get())));
        }
        return Optional.of(move);
    }

    /** Half the outside of what leaves the corner, along an axis; a round duct goes by its middle. */
    private Stack half(Cross end, Axis axis, Axis next) {
        if (axis == next || end.form() == Cross.Form.ROUND) {
            return Stack.ZERO;
        }
        return end.turned(next).size(axis).times(0.5).plus(wall);
    }

    private Map<Axis, Span> around(Cross end) {
        Map<Axis, Span> around = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            Stack size = end.sizes().getOrDefault(axis, Stack.ZERO).plus(wall.times(2));
            around.put(axis, Span.round(at.get(axis), size));
        }
        return around;
    }

    private Optional<Stack> place(Enclosure in, FaceDistance distance, Stack half, Map<Axis, Span> around) {
        Stack reading = readings.of(distance.near());
        if (AxisPlacing.coordinate(distance).isPresent()) {
            return Optional.of(reading);
        }
        Optional<Surface> face = in.face(distance.face());
        if (face.isEmpty()) {
            return Optional.empty();
        }
        Map<Axis, Span> thing = around.isEmpty() ? point() : around;
        Stack from = face.get().nearest(distance.out(), thing);
        boolean up = face.get().outward().sign() < 0 != distance.out();
        Stack off = reading.plus(half);
        return Optional.of(up ? from.plus(off) : from.minus(off));
    }

    private Map<Axis, Span> point() {
        Map<Axis, Span> point = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            point.put(axis, Span.at(at.get(axis)));
        }
        return point;
    }

    /** The axis that the next leg lies along, if its words say so. */
    private static Optional<Axis> next(ToldStation station) {
        Axis best = null;
        double most = -1;
        for (Map.Entry<String, Optional<Reading>> entry : station.ways().entrySet()) {
            double far = entry.getValue().map(Reading::value).orElse(0.0);
            Optional<Way> way = Way.named(entry.getKey());
            if (way.isPresent() && far > most) {
                most = far;
                best = way.get().axis();
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean turnsFairly(ToldStation station, Way way) {
        if (legs.isEmpty() || legs.get(legs.size() - 1).way() != way.opposite()) {
            return true;
        }
        return none(station.path(), "turns straight back on the leg before it", "Take the difference off that leg.")
                .isPresent();
    }

    private void fall(Way way, Map<Axis, Stack> move) {
        if (course.fall().isPresent() && way.axis() != Axis.Z && !move.containsKey(Axis.Z)) {
            Stack along = FirstOrder.magnitude(move.get(way.axis()));
            move.put(
                    Axis.Z,
                    FirstOrder.product(along, readings.of(course.fall().get())).times(-1));
        }
    }

    private <T> Optional<T> none(String path, String says, String advice) {
        troubles.wrong(path, says, advice);
        return Optional.empty();
    }
}
