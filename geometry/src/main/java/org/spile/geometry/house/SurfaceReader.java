package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Slope.Knot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ProfilePoint;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.kernel.measure.Stack;

/** Turns told surfaces into slopes in the frame of their trailer. */
final class SurfaceReader {
    private final Readings readings;
    private final Troubles troubles;

    SurfaceReader(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    /**
     * A ceiling, floor, top or roof.
     *
     * @param faces the plumb faces that its points are measured from
     * @param base the height that its heights count from
     * @return nothing if it says neither {@code at} nor {@code profile}, or a trouble was found
     */
    Optional<Slope> upright(ToldSurface told, Map<String, Surface> faces, Stack base) {
        Stack sag = told.sag()
                .map(mm -> InUse.down(told.path() + ".sag", readings.now(mm).value()))
                .orElse(Stack.ZERO);
        Stack from =
                base.minus(told.drop().map(readings::of).orElse(Stack.ZERO)).plus(sag);
        if (told.profile().isEmpty()) {
            return told.at().map(at -> Slope.level(from.plus(readings.of(at))));
        }
        List<Placed> points = new ArrayList<>();
        for (ProfilePoint point : told.profile()) {
            Optional<Placed> placed = place(point.from(), faces);
            if (placed.isEmpty()) {
                return Optional.empty();
            }
            points.add(new Placed(
                    placed.get().axis(), new Knot(placed.get().knot().at(), from.plus(readings.of(point.up())))));
        }
        return joined(told, points);
    }

    /**
     * A side that isn't plumb, or stands elsewhere than the plan says.
     *
     * @param way the way it looks; a single number is its distance from the side across
     * @param faces the plumb faces that its offsets are measured from
     * @param base the height that its heights count from
     */
    Optional<Slope> side(ToldSurface told, Way way, Map<String, Surface> faces, Stack base) {
        if (told.profile().isEmpty() && told.at().isPresent()) {
            Stack across = faces.get(way.opposite().face()).at().knots().get(0).value();
            return told.at().map(at -> Slope.level(across.plus(readings.of(at).times(way.sign()))));
        }
        List<Placed> points = new ArrayList<>();
        for (ProfilePoint point : told.profile()) {
            Optional<Placed> offset = place(point.from(), faces);
            if (offset.isEmpty()) {
                return Optional.empty();
            }
            Stack height = base.plus(readings.of(point.up()));
            points.add(new Placed(Axis.Z, new Knot(height, offset.get().knot().at())));
        }
        return points.isEmpty() ? Optional.empty() : joined(told, points);
    }

    /** A point along an axis, its value still to come. */
    private record Placed(Axis axis, Knot knot) {}

    private Optional<Placed> place(FaceDistance distance, Map<String, Surface> faces) {
        Stack reading = readings.of(distance.near());
        Optional<Axis> coordinate = AxisPlacing.coordinate(distance);
        if (coordinate.isPresent()) {
            return Optional.of(new Placed(coordinate.get(), new Knot(reading, Stack.ZERO)));
        }
        Surface face = faces.get(distance.face());
        if (face == null || face.axis() == Axis.Z) {
            troubles.wrong(
                    distance.path(),
                    "a point of a profile has no distance from \"" + distance.face() + "\"",
                    "Measure it from left, right, rear or front.");
            return Optional.empty();
        }
        Stack edge = face.at().knots().get(0).value();
        boolean up = face.outward().sign() < 0 != distance.out();
        return Optional.of(
                new Placed(face.axis(), new Knot(up ? edge.plus(reading) : edge.minus(reading), Stack.ZERO)));
    }

    private Optional<Slope> joined(ToldSurface told, List<Placed> points) {
        Axis axis = points.get(0).axis();
        if (points.stream().anyMatch(point -> point.axis() != axis)) {
            troubles.wrong(
                    told.path() + ".profile",
                    "its points run both fore and aft and across",
                    "Measure them all from left and right, or all from rear and front.");
            return Optional.empty();
        }
        List<Knot> knots = new ArrayList<>(points.stream().map(Placed::knot).toList());
        knots.sort(Comparator.comparingDouble(knot -> knot.at().valueMm()));
        for (int i = 1; i < knots.size(); i++) {
            if (!(knots.get(i).at().valueMm() > knots.get(i - 1).at().valueMm())) {
                troubles.wrong(
                        told.path() + ".profile",
                        "two of its points lie at the same place, "
                                + AxisPlacing.number(knots.get(i).at().valueMm()) + " along the trailer's axis",
                        "Leave one out, or move one by a millimetre for a step.");
                return Optional.empty();
            }
        }
        return Optional.of(knots.size() == 1 ? Slope.level(knots.get(0).value()) : Slope.through(axis, knots));
    }
}
