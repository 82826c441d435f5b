package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A surface given by points: straight between them, level beyond the first and the last.
 *
 * <p>It runs along one axis and gives the coordinate along another: a roof's height over the way across, a hull's offset
 * over the height.
 */
public final class Slope {
    // Two neighbouring pieces whose rises differ by less than this are one plane as far as their corner goes.
    private static final double SAME_RISE = 1e-9;

    // A place this near a point is at it (mm).
    private static final double SAME_PLACE_MM = 1e-9;

    private final Axis along;
    private final List<Knot> knots;

    /**
     * One point of it.
     *
     * @param at where, along the axis
     * @param value the coordinate there
     */
    public record Knot(Stack at, Stack value) {}

    private Slope(Axis along, List<Knot> knots) {
        this.along = along;
        this.knots = List.copyOf(knots);
    }

    /** A surface square to its axis. */
    public static Slope level(Stack value) {
        return new Slope(Axis.X, List.of(new Knot(Stack.ZERO, value)));
    }

    /**
     * A surface through points.
     *
     * @param along the axis it runs along
     * @param knots in ascending order along it, at least one
     * @throws IllegalArgumentException if two follow each other the wrong way
     */
    public static Slope through(Axis along, List<Knot> knots) {
        if (knots.isEmpty()) {
            throw new IllegalArgumentException("a slope needs a point");
        }
        for (int i = 1; i < knots.size(); i++) {
            if (!(knots.get(i).at().valueMm() > knots.get(i - 1).at().valueMm())) {
                throw new IllegalArgumentException("points of a slope must ascend: " + knots);
            }
        }
        return new Slope(along, knots);
    }

    /** The axis it runs along; of no meaning if it is level. */
    public Axis along() {
        return along;
    }

    /** Its points, ascending. */
    public List<Knot> knots() {
        return knots;
    }

    /** Whether it is the same everywhere because it has one point. */
    public boolean isLevel() {
        return knots.size() == 1;
    }

    /** The coordinate at a place; at an end point that of the piece that ends there. */
    public Stack at(Stack place) {
        double p = place.valueMm();
        Knot last = knots.get(knots.size() - 1);
        if (isLevel() || p < knots.get(0).at().valueMm() - SAME_PLACE_MM) {
            return knots.get(0).value();
        }
        if (p > last.at().valueMm() + SAME_PLACE_MM) {
            return last.value();
        }
        int i = 1;
        while (i + 1 < knots.size() && knots.get(i).at().valueMm() < p) {
            i++;
        }
        return onPiece(i - 1, place);
    }

    private Stack onPiece(int i, Stack place) {
        Knot a = knots.get(i);
        return a.value().plus(FirstOrder.product(rise(i), place.minus(a.at())));
    }

    private Stack rise(int i) {
        Knot a = knots.get(i);
        Knot b = knots.get(i + 1);
        return FirstOrder.quotient(b.value().minus(a.value()), b.at().minus(a.at()));
    }

    /** The places in a range where the surface may turn: its ends and the points between. */
    public List<Stack> places(Span range) {
        List<Stack> places = new ArrayList<>();
        places.add(range.low());
        for (Knot knot : knots) {
            double p = knot.at().valueMm();
            boolean within = p > range.low().valueMm() + SAME_PLACE_MM
                    && p < range.high().valueMm() - SAME_PLACE_MM;
            if (!isLevel() && within) {
                places.add(knot.at());
            }
        }
        places.add(range.high());
        return places;
    }

    /** The least coordinate over a range. */
    public Stack least(Span range) {
        return places(range).stream().map(this::at).reduce(FirstOrder::lesser).orElseThrow();
    }

    /** The greatest coordinate over a range. */
    public Stack greatest(Span range) {
        return places(range).stream().map(this::at).reduce(FirstOrder::greater).orElseThrow();
    }

    /** The surface shifted as a whole. */
    public Slope plus(Stack shift) {
        return new Slope(
                along,
                knots.stream()
                        .map(knot -> new Knot(knot.at(), knot.value().plus(shift)))
                        .toList());
    }

    /** The same surface with points at the ends of a range and none beyond them. */
    public Slope over(Span range) {
        if (isLevel()) {
            return new Slope(along, List.of(new Knot(range.low(), knots.get(0).value())));
        }
        return new Slope(
                along, places(range).stream().map(p -> new Knot(p, at(p))).toList());
    }

    /** The same level surface, told as running along an axis over a range; others as {@link #over}. */
    public Slope spread(Axis axis, Span range) {
        if (!isLevel()) {
            return over(range);
        }
        Stack value = knots.get(0).value();
        return new Slope(axis, List.of(new Knot(range.low(), value), new Knot(range.high(), value)));
    }

    /**
     * The surface moved square to itself, its pieces meeting at mitres; the ends stay where they are along the axis.
     *
     * @param thick how far (mm)
     * @param sign +1 to greater coordinates, -1 to lesser
     */
    public Slope offset(Stack thick, int sign) {
        List<Stack> starts = new ArrayList<>();
        List<Stack> rises = new ArrayList<>();
        List<Stack> values = new ArrayList<>();
        if (isLevel()) {
            return plus(thick.times(sign));
        }
        for (int i = 0; i + 1 < knots.size(); i++) {
            Stack rise = rise(i);
            Stack longer = FirstOrder.root(FirstOrder.product(rise, rise).plus(1));
            starts.add(knots.get(i).at());
            rises.add(rise);
            values.add(
                    knots.get(i).value().plus(FirstOrder.product(thick, longer).times(sign)));
        }
        return new Slope(along, mitred(starts, rises, values));
    }

    /** Joins lines {@code value + rise (p - start)}; a piece that the others have eaten is dropped. */
    private List<Knot> mitred(List<Stack> starts, List<Stack> rises, List<Stack> values) {
        Stack first = knots.get(0).at();
        Stack end = knots.get(knots.size() - 1).at();
        while (true) {
            List<Stack> places = new ArrayList<>();
            places.add(first);
            for (int i = 1; i < starts.size(); i++) {
                places.add(meeting(i, starts, rises, values));
            }
            places.add(end);
            int eaten = firstEaten(places);
            if (eaten < 0 || starts.size() == 1) {
                return joined(places, starts, rises, values);
            }
            starts.remove(eaten);
            rises.remove(eaten);
            values.remove(eaten);
        }
    }

    private static Stack meeting(int i, List<Stack> starts, List<Stack> rises, List<Stack> values) {
        Stack turn = rises.get(i).minus(rises.get(i - 1));
        if (Math.abs(turn.valueMm()) < SAME_RISE) {
            return starts.get(i);
        }
        Stack before = values.get(i - 1)
                .plus(FirstOrder.product(rises.get(i - 1), starts.get(i).minus(starts.get(i - 1))));
        return starts.get(i).plus(FirstOrder.quotient(before.minus(values.get(i)), turn));
    }

    private static int firstEaten(List<Stack> places) {
        for (int i = 0; i + 1 < places.size(); i++) {
            if (!(places.get(i + 1).valueMm() > places.get(i).valueMm())) {
                return Math.min(i, places.size() - 2);
            }
        }
        return -1;
    }

    private static List<Knot> joined(List<Stack> places, List<Stack> starts, List<Stack> rises, List<Stack> values) {
        List<Knot> knots = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            int piece = Math.min(i, starts.size() - 1);
            Stack value = values.get(piece)
                    .plus(FirstOrder.product(rises.get(piece), places.get(i).minus(starts.get(piece))));
            knots.add(new Knot(places.get(i), value));
        }
        return knots;
    }
}
