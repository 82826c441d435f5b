package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Whether a path ends where it should, and what to write if it doesn't. */
final class Arrival {
    private final Course course;
    private final Target target;
    private final Optional<TerminalPlace> terminal;
    private final Readings readings;
    private final Troubles troubles;

    /**
     * @param terminal the terminal it goes to, if it goes to one
     */
    Arrival(Course course, Target target, Optional<TerminalPlace> terminal, Readings readings, Troubles troubles) {
        this.course = course;
        this.target = target;
        this.terminal = terminal;
        this.readings = readings;
        this.troubles = troubles;
    }

    void check(List<Leg> legs) {
        Vector3D end = legs.get(legs.size() - 1).to().at();
        if (target instanceof Target.AtOpening at) {
            Vector3D off = end.subtract(at.opening().centre().at());
            for (Axis axis : Axis.values()) {
                if (Math.abs(axis.of(off)) > AxisPlacing.SAME_PLACE_MM) {
                    misses(legs, axis, axis.of(off));
                }
            }
        } else if (target instanceof Target.IntoBox into) {
            for (Axis axis : Axis.values()) {
                var span = into.box().own().get(axis);
                double below = span.low().valueMm() - axis.of(end);
                double above = axis.of(end) - span.high().valueMm();
                if (Math.max(below, above) > AxisPlacing.SAME_PLACE_MM) {
                    beside(axis, below > 0 ? -below : above);
                }
            }
        } else if (target instanceof Target.Outside outside && inside(outside.from(), end)) {
            troubles.wrong(
                    course.path() + ".path",
                    "says it ends outside, but its last leg ends within "
                            + outside.from().title(),
                    "Let it go on: a way with rest goes to the edge.");
        }
    }

    private static boolean inside(Trailer trailer, Vector3D end) {
        boolean over = trailer.deck().outline().contains(Vector2D.of(end.getX(), end.getY()));
        boolean below = trailer.over()
                .map(roof -> end.getZ()
                        < roof.at(Stack.constant(roof.along().of(end))).valueMm())
                .orElse(true);
        return over && below && end.getZ() > AxisPlacing.SAME_PLACE_MM && !onEdge(trailer, end);
    }

    private static boolean onEdge(Trailer trailer, Vector3D end) {
        for (Way way : List.of(Way.FORWARD, Way.AFT, Way.LEFT, Way.RIGHT)) {
            double gap = way.sign() * (trailer.edge(way).valueMm() - way.axis().of(end));
            if (gap < AxisPlacing.SAME_PLACE_MM) {
                return true;
            }
        }
        return false;
    }

    private void misses(List<Leg> legs, Axis axis, double off) {
        Way way = Way.of(axis, off);
        String says = course.path() + " ends " + AxisPlacing.number(Math.abs(off)) + " mm " + beyond(way) + " "
                + target.title() + "'s middle";
        Leg last = null;
        for (Leg leg : legs) {
            if (leg.typed().contains(axis)) {
                last = leg;
            }
        }
        if (last == null) {
            troubles.wrong(
                    course.path() + ".path",
                    says,
                    "Add a leg: {" + way.opposite().word() + ": rest}" + elsewhere(axis, off, ", or ") + ".");
            return;
        }
        Way typed = typed(last, axis);
        Reading reading = last.station().ways().get(typed.word()).orElseThrow();
        double right = readings.now(reading).value() - typed.sign() * off;
        troubles.wrong(
                last.path() + "." + typed.word(),
                says,
                "Write " + typed.word() + ": " + AxisPlacing.number(right) + " or " + typed.word() + ": rest here"
                        + elsewhere(axis, off, ", or ") + ".");
    }

    private static Way typed(Leg leg, Axis axis) {
        for (Way way : Way.values()) {
            if (way.axis() == axis && leg.station().ways().containsKey(way.word())) {
                return way;
            }
        }
        throw new IllegalStateException("a leg typed along " + axis + " without a way: " + leg.station());
    }

    /** The edit that would move the terminal to the path's end, where its place is one reading from a face. */
    private String elsewhere(Axis axis, double off, String before) {
        if (terminal.isEmpty() || !(target instanceof Target.AtOpening at)) {
            return "";
        }
        // The terminal's own frame may be turned against the path's: docked trailers are by quarters.
        Vector3D own = ownShift(at, axis.unit().multiply(off));
        Axis ownAxis = Axis.nearest(own);
        ToldTerminal told = terminal.get().told();
        for (FaceDistance distance : told.placed().at()) {
            Optional<Surface> face = terminal.get().in().face(distance.face());
            if (face.isPresent()
                    && face.get().axis() == ownAxis
                    && distance.far().isEmpty()) {
                boolean up = face.get().outward().sign() < 0 != distance.out();
                double value = readings.now(distance.near()).value() + (up ? 1 : -1) * ownAxis.of(own);
                return value < 0 ? "" : before + "set " + distance.near().path() + "=" + AxisPlacing.number(value);
            }
        }
        return "";
    }

    private static Vector3D ownShift(Target.AtOpening at, Vector3D shift) {
        double along = shift.dot(at.opening().outward());
        double side = shift.dot(at.opening().side());
        double up = shift.dot(at.opening().up());
        return at.own()
                .outward()
                .multiply(along)
                .add(at.own().side().multiply(side))
                .add(at.own().up().multiply(up));
    }

    private void beside(Axis axis, double off) {
        Way way = Way.of(axis, off);
        troubles.wrong(
                course.path() + ".path",
                course.path() + " ends " + AxisPlacing.number(Math.abs(off)) + " mm " + beyond(way) + " "
                        + target.title(),
                "Let it end on " + target.title() + ".");
    }

    private static String beyond(Way way) {
        return switch (way) {
            case FORWARD -> "forward of";
            case AFT -> "aft of";
            case LEFT -> "to the left of";
            case RIGHT -> "to the right of";
            case UP -> "above";
            case DOWN -> "below";
        };
    }
}
