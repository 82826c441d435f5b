package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.measure.Written;

/** Puts a box in its place along one axis, and says so where its readings don't add up. */
final class AxisPlacing {
    /** Readings that agree within this are the same place: finer than a tape is read (mm). */
    static final double SAME_PLACE_MM = 0.5;

    private final Readings readings;
    private final Troubles troubles;
    private final Asked asked;
    private final Axis axis;
    private final Map<Axis, Span> known;

    private final List<Stack> lows = new ArrayList<>();
    private final List<Stack> highs = new ArrayList<>();
    private final List<Stack> middles = new ArrayList<>();
    private final List<FaceDistance> told = new ArrayList<>();

    AxisPlacing(Readings readings, Troubles troubles, Asked asked, Axis axis, Map<Axis, Span> known) {
        this.readings = readings;
        this.troubles = troubles;
        this.asked = asked;
        this.axis = axis;
        this.known = known;
    }

    /** The axis of a distance that is a coordinate. */
    static Optional<Axis> coordinate(FaceDistance distance) {
        return switch (distance.face()) {
            case "x" -> Optional.of(Axis.X);
            case "y" -> Optional.of(Axis.Y);
            case "z" -> Optional.of(Axis.Z);
            default -> Optional.empty();
        };
    }

    Optional<Span> span() {
        asked.at().forEach(this::note);
        Optional<Stack> size = Optional.ofNullable(asked.sizes().get(axis));
        if (size.isPresent() && !(size.get().valueMm() >= 0)) {
            return none(
                    "",
                    asked.words().get(axis) + " " + mm(size.get()) + " is less than nothing",
                    "Sizes are positive.");
        }
        if (told.isEmpty()) {
            return unsaid(size);
        }
        return size.isPresent() ? sized(size.get()) : between();
    }

    private void note(FaceDistance distance) {
        if (coordinate(distance).filter(a -> a == axis).isPresent()) {
            told.add(distance);
            Stack near = readings.of(distance.near());
            if (distance.far().isPresent()) {
                both(near, readings.of(distance.far().get()));
            } else {
                middles.add(near);
            }
        }
        Optional<Surface> face = asked.in().face(distance.face()).filter(f -> f.axis() == axis);
        if (face.isPresent() && coordinate(distance).isEmpty()) {
            told.add(distance);
            fromFace(face.get(), distance);
        }
    }

    private void fromFace(Surface face, FaceDistance distance) {
        Stack from = face.nearest(distance.out(), known);
        boolean up = face.outward().sign() < 0 != distance.out();
        Stack near = placed(from, distance.near(), up);
        if (distance.far().isPresent()) {
            both(near, placed(from, distance.far().get(), up));
        } else if (asked.round().contains(axis)) {
            middles.add(near);
        } else {
            (up ? lows : highs).add(near);
        }
    }

    private Stack placed(Stack from, Reading distance, boolean up) {
        return up ? from.plus(readings.of(distance)) : from.minus(readings.of(distance));
    }

    private void both(Stack one, Stack other) {
        boolean ascending = one.valueMm() <= other.valueMm();
        lows.add(ascending ? one : other);
        highs.add(ascending ? other : one);
    }

    private Optional<Span> sized(Stack size) {
        List<Span> candidates = new ArrayList<>();
        for (Stack low : lows) {
            candidates.add(new Span(low, low.plus(size)));
        }
        for (Stack high : highs) {
            candidates.add(new Span(high.minus(size), high));
        }
        for (Stack middle : middles) {
            candidates.add(Span.round(middle, size));
        }
        Span first = candidates.get(0);
        for (Span other : candidates) {
            double off = other.low().minus(first.low()).valueMm();
            if (Math.abs(off) > SAME_PLACE_MM) {
                return disagree(size, off);
            }
        }
        return Optional.of(first);
    }

    private Optional<Span> between() {
        if (lows.isEmpty() && highs.isEmpty() && !asked.round().contains(axis)) {
            return none("", "has no " + word(), "Write " + word() + ":, or both sides.");
        }
        if (lows.isEmpty() || highs.isEmpty()) {
            if (asked.round().contains(axis) && !middles.isEmpty()) {
                return Optional.of(Span.at(middles.get(0)));
            }
            return none(
                    "",
                    "has no " + word(),
                    "Write " + word() + ":, or its distance from the " + across() + " as well.");
        }
        Span span = new Span(lows.get(0), highs.get(0));
        if (!span.positive()) {
            return none(
                    ".at",
                    readingsInWords() + " leave " + mm(span.size()) + " between them",
                    asked.in().id() + " is " + inside() + ".");
        }
        return Optional.of(span);
    }

    private Optional<Span> unsaid(Optional<Stack> size) {
        Optional<Span> room = asked.in().extent(axis);
        if (size.isEmpty()) {
            if (asked.unsaid().fills() && room.isPresent()) {
                return room;
            }
            return none("", "has no " + word(), "Write " + word() + ":, or its distances from both sides.");
        }
        if (axis == Axis.Z && asked.unsaid().upright() != Asked.Upright.CENTRED) {
            return upright(size.get());
        }
        if (room.isEmpty()) {
            return none(
                    "",
                    "has no place " + Way.of(axis, 1).word() + " and "
                            + Way.of(axis, -1).word(),
                    "Write at:.");
        }
        return Optional.of(Span.round(room.get().middle(), size.get()));
    }

    private Optional<Span> upright(Stack size) {
        Asked.Unsaid unsaid = asked.unsaid();
        Enclosure in = asked.in();
        if (unsaid.upright() == Asked.Upright.HANGS && in.hanging().isPresent()) {
            Stack high = in.hanging().get().nearest(false, known).minus(unsaid.gap());
            return Optional.of(new Span(high.minus(size), high));
        }
        Optional<Stack> low = unsaid.height().or(() -> in.resting().map(face -> face.nearest(false, known)));
        if (low.isEmpty()) {
            return none("", "has no height in " + in.id(), "Write its distance from a level face under at:.");
        }
        return low.map(bottom -> new Span(bottom, bottom.plus(size)));
    }

    private Optional<Span> disagree(Stack size, double off) {
        Optional<Span> room = asked.in().extent(axis);
        if (told.size() == 2 && room.isPresent() && told.stream().allMatch(this::plain)) {
            FaceDistance one = told.get(0);
            FaceDistance two = told.get(1);
            double sum = now(one) + size.valueMm() + now(two);
            double whole = room.get().size().valueMm();
            return none(
                    ".at",
                    one.face() + " " + number(now(one)) + " + " + word() + " " + mm(size) + " + " + two.face() + " "
                            + number(now(two)) + " = " + number(sum) + "; "
                            + asked.in().id() + " is " + number(whole)
                            + " from " + one.face() + " to " + two.face() + ", " + number(Math.abs(whole - sum))
                            + (whole > sum ? " more" : " less"),
                    "Leave one out.");
        }
        return none(
                ".at",
                readingsInWords() + " and " + word() + " " + mm(size) + " disagree by " + number(Math.abs(off)),
                "Leave one out.");
    }

    private boolean plain(FaceDistance distance) {
        return !distance.out()
                && distance.far().isEmpty()
                && coordinate(distance).isEmpty();
    }

    private double now(FaceDistance distance) {
        return readings.now(distance.near()).value();
    }

    private String readingsInWords() {
        List<String> words = new ArrayList<>();
        for (FaceDistance distance : told) {
            String far = distance.far()
                    .map(reading -> ".." + number(readings.now(reading).value()))
                    .orElse("");
            words.add(distance.face() + " " + number(now(distance)) + far + (distance.out() ? " out" : ""));
        }
        return String.join(" and ", words);
    }

    private String word() {
        return asked.words().get(axis);
    }

    private String across() {
        FaceDistance only = told.get(0);
        return asked.in()
                .face(only.face())
                .map(face -> face.outward().opposite())
                .map(way -> faceWord(way))
                .orElse("other side");
    }

    private String faceWord(Way way) {
        return asked.in().faces().entrySet().stream()
                .filter(entry -> entry.getValue().outward() == way)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(way.face());
    }

    private String inside() {
        return asked.in()
                .extent(axis)
                .map(span -> number(span.size().valueMm()) + " " + axis.size())
                .orElse("open there");
    }

    private Optional<Span> none(String key, String says, String advice) {
        troubles.wrong(asked.path() + key, says, advice);
        return Optional.empty();
    }

    private static String mm(Stack stack) {
        return number(stack.valueMm());
    }

    static String number(double mm) {
        return Written.number(mm, 1);
    }
}
