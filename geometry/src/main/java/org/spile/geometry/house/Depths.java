package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/**
 * The upright depth between two surfaces and leaning sides, at every place of a plan.
 *
 * <p>Between the lines over which a surface turns the depth is linear, so over a footprint it is least at a corner of the
 * footprint, where such a line leaves it, or where two such lines cross within it. Exact, unless a side leans across the
 * way along which a surface slopes: there the line on which they meet is left out.
 */
final class Depths {
    private final Slope lower;
    private final Slope upper;
    private final Map<Way, Slope> leaning;

    /** A depth at a place, in the trailer's frame. */
    record At(Vector2D place, Stack low, Stack high) {
        Stack depth() {
            return high.minus(low);
        }
    }

    Depths(Slope lower, Slope upper, Map<Way, Slope> leaning) {
        this.lower = lower;
        this.upper = upper;
        this.leaning = leaning;
    }

    /** Lining to lining. */
    static Depths of(Cavity cavity) {
        var sides = new EnumMap<Way, Slope>(Way.class);
        cavity.leaning().forEach((way, side) -> sides.put(way, side.lined()));
        return new Depths(cavity.lower().lined(), cavity.upper().lined(), sides);
    }

    /** The least depth over an outline; the first of equals. */
    At least(Outline over) {
        return places(over).stream()
                .map(this::at)
                .reduce((a, b) -> b.depth().valueMm() < a.depth().valueMm() ? b : a)
                .orElseThrow();
    }

    /** The greatest depth over an outline; the first of equals. */
    At most(Outline over) {
        return places(over).stream()
                .map(this::at)
                .reduce((a, b) -> b.depth().valueMm() > a.depth().valueMm() ? b : a)
                .orElseThrow();
    }

    /** The depth at a place; of several pieces of an upright line the longest. */
    At at(Vector2D place) {
        Stack low = lower.at(along(lower, place));
        Stack high = upper.at(along(upper, place));
        At whole = new At(place, low, high);
        for (Map.Entry<Way, Slope> side : leaning.entrySet()) {
            Way way = side.getKey();
            double across = way.axis() == Axis.X ? place.getX() : place.getY();
            whole = new SideCut(way, side.getValue(), across).cut(whole);
        }
        return whole;
    }

    private static Stack along(Slope slope, Vector2D place) {
        return Stack.constant(slope.along() == Axis.X ? place.getX() : place.getY());
    }

    private List<Vector2D> places(Outline over) {
        List<Vector2D> places = new ArrayList<>(over.shell());
        over.holes().forEach(places::addAll);
        Set<Double> lines = turns(Axis.X);
        Set<Double> across = turns(Axis.Y);
        List<List<Vector2D>> rings = new ArrayList<>(over.holes());
        rings.add(over.shell());
        for (List<Vector2D> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Vector2D a = ring.get(i);
                Vector2D b = ring.get((i + 1) % ring.size());
                lines.forEach(x -> crossing(a, b, x, true).ifPresent(places::add));
                across.forEach(y -> crossing(a, b, y, false).ifPresent(places::add));
            }
        }
        for (double x : lines) {
            for (double y : across) {
                Vector2D place = Vector2D.of(x, y);
                if (over.contains(place)) {
                    places.add(place);
                }
            }
        }
        return places;
    }

    private static Optional<Vector2D> crossing(Vector2D a, Vector2D b, double at, boolean x) {
        double from = x ? a.getX() : a.getY();
        double to = x ? b.getX() : b.getY();
        if (Math.min(from, to) >= at || Math.max(from, to) <= at) {
            return Optional.empty();
        }
        Vector2D found = a.lerp(b, (at - from) / (to - from));
        return Optional.of(x ? Vector2D.of(at, found.getY()) : Vector2D.of(found.getX(), at));
    }

    /** Where, along an axis, a surface turns or a leaning side meets one. */
    Set<Double> turns(Axis axis) {
        Set<Double> turns = new TreeSet<>();
        for (Slope slope : List.of(lower, upper)) {
            if (!slope.isLevel() && slope.along() == axis) {
                slope.knots().forEach(knot -> turns.add(knot.at().valueMm()));
            }
        }
        leaning.forEach((way, side) -> {
            if (way.axis() == axis) {
                side.knots().forEach(knot -> turns.add(knot.value().valueMm()));
                SideCut.meetings(side, lower, axis).forEach(turns::add);
                SideCut.meetings(side, upper, axis).forEach(turns::add);
            }
        });
        return turns;
    }

    /** The greatest depth over a plan. */
    Stack most(Plan plan) {
        return most(plan.outline()).depth();
    }
}
