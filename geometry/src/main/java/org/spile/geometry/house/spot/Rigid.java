package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Move;

/** A rigid motion whose shifts and angles know what they rest on: a chain of shifts and turns. Immutable. */
public final class Rigid {
    /** No motion. */
    public static final Rigid NONE = new Rigid(List.of());

    private final List<Step> steps;
    private final Move nominal;

    private sealed interface Step {
        Spot apply(Spot spot);

        Move nominal();

        Step inverse();
    }

    private record Shift(Spot by) implements Step {
        @Override
        public Spot apply(Spot spot) {
            return spot.plus(by);
        }

        @Override
        public Move nominal() {
            return Move.shift(by.at());
        }

        @Override
        public Step inverse() {
            return new Shift(by.times(-1));
        }
    }

    private record Turn(Spot pin, Vector3D axis, Stack deg) implements Step {
        /** Rodrigues' formula, with sine and cosine to first order. */
        @Override
        public Spot apply(Spot spot) {
            Spot lever = spot.minus(pin);
            Stack cosine = FirstOrder.cosine(deg);
            Stack sine = FirstOrder.sine(deg);
            Stack rest = Stack.constant(1).minus(cosine);
            Spot along = Spot.along(axis, lever.dot(axis));
            return pin.plus(scaled(lever, cosine))
                    .plus(scaled(across(lever), sine))
                    .plus(scaled(along, rest));
        }

        private Spot across(Spot v) {
            return new Spot(
                    v.z().times(axis.getY()).minus(v.y().times(axis.getZ())),
                    v.x().times(axis.getZ()).minus(v.z().times(axis.getX())),
                    v.y().times(axis.getX()).minus(v.x().times(axis.getY())));
        }

        private static Spot scaled(Spot v, Stack factor) {
            return new Spot(
                    FirstOrder.product(v.x(), factor),
                    FirstOrder.product(v.y(), factor),
                    FirstOrder.product(v.z(), factor));
        }

        @Override
        public Move nominal() {
            return Move.about(pin.at(), axis, Math.toRadians(deg.valueMm()));
        }

        @Override
        public Step inverse() {
            return new Turn(pin, axis, deg.times(-1));
        }
    }

    private Rigid(List<Step> steps) {
        this.steps = List.copyOf(steps);
        this.nominal = steps.stream().map(Step::nominal).reduce(Move.identity(), Move::then);
    }

    /** A shift. */
    public static Rigid shift(Spot by) {
        return new Rigid(List.of(new Shift(by)));
    }

    /**
     * A turn about a fixed direction through a pin.
     *
     * @param pin a point of the axis
     * @param axis unit vector
     * @param deg angle in degrees, right-handed about the axis
     */
    public static Rigid turn(Spot pin, Vector3D axis, Stack deg) {
        return new Rigid(List.of(new Turn(pin, axis, deg)));
    }

    /** This motion, then another. */
    public Rigid then(Rigid next) {
        if (steps.isEmpty()) {
            return next;
        }
        List<Step> chain = new ArrayList<>(steps);
        chain.addAll(next.steps);
        return new Rigid(chain);
    }

    /** The motion that undoes this one. */
    public Rigid inverse() {
        List<Step> chain = new ArrayList<>();
        steps.forEach(step -> chain.add(step.inverse()));
        Collections.reverse(chain);
        return new Rigid(chain);
    }

    /** Whether it moves nothing, whatever the readings. */
    public boolean isNone() {
        return steps.isEmpty();
    }

    /** The motion with every reading at its value. */
    public Move nominal() {
        return nominal;
    }

    /** Moves a point. */
    public Spot apply(Spot spot) {
        Spot moved = spot;
        for (Step step : steps) {
            moved = step.apply(moved);
        }
        return moved;
    }
}
