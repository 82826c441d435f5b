package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Loft;
import org.spile.geometry.house.spot.Rod;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.kernel.measure.Stack;

/**
 * The outside of each leg: its section with all layers, from corner to corner.
 *
 * <p>At a mitred corner both legs end at the plane halfway between them, so together they are exactly the mitre. A corner
 * with a radius belongs half to either leg: arcs of 15 degrees whose flat faces lie inside and outside the true bend, at
 * most 0.86 % of the radius off, always on the safe side. A bend begins and ends square to the axes; what a leg slants it
 * slants between its bends. A straight round leg is exact.
 */
final class LegShapes {
    private static final int ARCS = 6;
    private static final double ARC_RAD = Math.PI / 2 / ARCS;

    private final Troubles troubles;
    private final List<Leg> legs;
    private final Stack wall;

    /**
     * @param wall all layers, by which the outside stands out from the clear section
     */
    LegShapes(List<Leg> legs, Stack wall, Troubles troubles) {
        this.legs = legs;
        this.wall = wall;
        this.troubles = troubles;
    }

    /** One leg's shapes each; nothing, and a trouble, for a leg too short for its corners. */
    List<Optional<LegShape>> shapes() {
        List<Optional<LegShape>> shapes = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            shapes.add(shape(i));
        }
        return shapes;
    }

    private Optional<LegShape> shape(int i) {
        Leg leg = legs.get(i);
        Optional<Leg> before = neighbour(i, -1);
        Optional<Leg> after = neighbour(i, 1);
        Stack cutBefore = before.flatMap(b -> leg.bend()).orElse(Stack.ZERO);
        Stack cutAfter = after.flatMap(Leg::bend).orElse(Stack.ZERO);
        double left = leg.alongMm() - cutBefore.valueMm() - cutAfter.valueMm();
        if (tooTight(leg, before)) {
            return Optional.empty();
        }
        if (left < -AxisPlacing.SAME_PLACE_MM) {
            troubles.wrong(
                    leg.path(),
                    "a leg of " + AxisPlacing.number(leg.alongMm()) + " is too short for its bends, which take "
                            + AxisPlacing.number(cutBefore.plus(cutAfter).valueMm()),
                    "Make it longer, its bends smaller (bend: radius 80), or mitred.");
            return Optional.empty();
        }
        List<Shape> bendBefore = before.isPresent() && cutBefore.valueMm() > 0
                ? arcsOf(leg, before.get(), wall, ARCS / 2, ARCS)
                : List.of();
        List<Shape> bendAfter =
                after.isPresent() && cutAfter.valueMm() > 0 ? arcsOf(after.get(), leg, wall, 0, ARCS / 2) : List.of();
        if (left <= 1e-3 && !(bendBefore.isEmpty() && bendAfter.isEmpty())) {
            return swallowed(leg)
                    ? Optional.empty()
                    : Optional.of(LegShape.of(bendBefore, Optional.empty(), bendAfter));
        }
        return straight(leg, before, after, cutBefore, cutAfter)
                .map(straight -> LegShape.of(bendBefore, Optional.of(straight), bendAfter));
    }

    /** A transition or a slant whose bends leave it no length to be made in. */
    private boolean swallowed(Leg leg) {
        if (leg.start().same(leg.end())) {
            return false;
        }
        troubles.wrong(
                leg.path(),
                "its bends take all " + AxisPlacing.number(leg.alongMm())
                        + " of it, and leave no length for its change of section",
                "Make it longer, or change the section in another leg.");
        return true;
    }

    /** The leg before or after, if there is a corner between. */
    private Optional<Leg> neighbour(int i, int step) {
        int j = i + step;
        if (j < 0 || j >= legs.size()) {
            return Optional.empty();
        }
        Leg other = legs.get(j);
        return corner(legs.get(i), other) ? Optional.of(other) : Optional.empty();
    }

    /** Whether two legs that follow each other meet in a corner, and not straight on or beyond a joint of trailers. */
    static boolean corner(Leg one, Leg other) {
        return other.trailer().equals(one.trailer())
                && other.way().axis() != one.way().axis();
    }

    private boolean tooTight(Leg leg, Optional<Leg> before) {
        if (before.isEmpty() || leg.bend().isEmpty()) {
            return false;
        }
        Axis inPlane = before.get().way().axis();
        double half = leg.start().wrapped(wall).size(inPlane).valueMm() / 2;
        if (leg.bend().get().valueMm() >= half) {
            return false;
        }
        troubles.wrong(
                leg.path(),
                "a bend of radius " + AxisPlacing.number(leg.bend().get().valueMm())
                        + " is tighter than half of what it bends, " + AxisPlacing.number(half),
                "Radii are to the middle line.");
        return true;
    }

    private Optional<Shape> straight(
            Leg leg, Optional<Leg> before, Optional<Leg> after, Stack cutBefore, Stack cutAfter) {
        double length = leg.alongMm();
        Spot from = leg.from().toward(leg.to(), 0);
        Spot to = leg.to();
        if (cutBefore.valueMm() > 0) {
            from = leg.from().plus(leg.way().unit(), cutBefore);
        }
        if (cutAfter.valueMm() > 0) {
            to = leg.to().plus(leg.way().opposite().unit(), cutAfter);
        }
        boolean mitredBefore = before.isPresent() && leg.bend().isEmpty();
        boolean mitredAfter = after.isPresent() && after.get().bend().isEmpty();
        boolean round = leg.start().form() == Cross.Form.ROUND && leg.end().form() == Cross.Form.ROUND;
        Cross start = leg.start().wrapped(wall);
        Cross end = leg.end().wrapped(wall);
        if (round && !mitredBefore && !mitredAfter && leg.start().same(leg.end())) {
            return Optional.of(
                    Rod.of(from, to, start.size(Cross.first(start.main())).times(0.5)));
        }
        boolean fine = start.form() != Cross.Form.RECTANGULAR || end.form() != Cross.Form.RECTANGULAR;
        Ring near = new Ring(from, start, fine);
        Ring far = new Ring(to, end, fine);
        List<Spot> nearRing = mitredBefore
                ? near.mitred(leg.way().opposite(), before.get().way().opposite())
                : near.square();
        List<Spot> farRing = mitredAfter ? far.mitred(leg.way(), after.get().way()) : far.square();
        for (int k = 0; k < nearRing.size(); k++) {
            Axis axis = leg.way().axis();
            double edge = leg.way().sign()
                    * farRing.get(k).minus(nearRing.get(k)).get(axis).valueMm();
            if (edge < -1e-6) {
                troubles.wrong(
                        leg.path(),
                        "a leg of " + AxisPlacing.number(length) + " is too short for its mitred corners by "
                                + AxisPlacing.number(-edge),
                        "Make it longer, or the duct flatter.");
                return Optional.empty();
            }
        }
        return Optional.of(Loft.between(nearRing, farRing));
    }

    /** A part of the bend before a leg, round the corner where it starts. */
    private static List<Shape> arcsOf(Leg leg, Leg before, Stack wall, int first, int end) {
        Vector3D in = before.way().unit();
        Vector3D out = leg.way().unit();
        Stack radius = leg.bend().orElseThrow();
        Cross outside = leg.start().wrapped(wall);
        Spot centre = leg.from().plus(in, radius.times(-1)).plus(out, radius);
        List<Shape> arcs = new ArrayList<>();
        for (int k = first; k < end; k++) {
            double from = k * ARC_RAD;
            double to = (k + 1) * ARC_RAD;
            arcs.add(
                    outside.form() == Cross.Form.ROUND
                            ? tube(centre, in, out, radius, outside, from, to)
                            : wedge(centre, in, out, radius, outside, leg, from, to));
        }
        return arcs;
    }

    private static Vector3D spoke(Vector3D in, Vector3D out, double angle) {
        return in.multiply(Math.sin(angle)).subtract(out.multiply(Math.cos(angle)));
    }

    /** A straight tube that takes in a piece of the bend, and reaches so far past its ends that no wedge stays open. */
    private static Shape tube(
            Spot centre, Vector3D in, Vector3D out, Stack radius, Cross outside, double from, double to) {
        double sagitta = 1 - Math.cos(ARC_RAD / 2);
        Stack around = outside.size(Cross.first(outside.main())).times(0.5).plus(radius.times(sagitta));
        Vector3D along = spoke(in, out, (from + to) / 2 + Math.PI / 2);
        Stack past = around.times(Math.tan(ARC_RAD / 2));
        Spot a = centre.plus(spoke(in, out, from), radius).plus(along, past.times(-1));
        Spot b = centre.plus(spoke(in, out, to), radius).plus(along, past);
        return Rod.of(a, b, around);
    }

    private static Shape wedge(
            Spot centre, Vector3D in, Vector3D out, Stack radius, Cross outside, Leg leg, double from, double to) {
        Axis kept = Slabs.third(Axis.nearest(in), leg.way().axis());
        Stack half = outside.size(Axis.nearest(in)).times(0.5);
        Stack side = outside.size(kept).times(0.5);
        Stack inner = radius.minus(half);
        Stack outer = radius.plus(half).times(1 / Math.cos(ARC_RAD / 2));
        List<List<Spot>> rings = new ArrayList<>();
        for (double angle : new double[] {from, to}) {
            Vector3D spoke = spoke(in, out, angle);
            List<Spot> ring = new ArrayList<>();
            ring.add(centre.plus(spoke, inner).plus(kept.unit(), side.times(-1)));
            ring.add(centre.plus(spoke, outer).plus(kept.unit(), side.times(-1)));
            ring.add(centre.plus(spoke, outer).plus(kept.unit(), side));
            ring.add(centre.plus(spoke, inner).plus(kept.unit(), side));
            rings.add(ring);
        }
        return Loft.between(rings.get(0), rings.get(1));
    }
}
