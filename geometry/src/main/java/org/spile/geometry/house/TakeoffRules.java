package org.spile.geometry.house;

import java.util.List;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldEnd;

/**
 * What an end at the side of another run must keep to: that side is straight and flat along the leg, and the opening lies
 * within it.
 *
 * <p>An opening may be as wide as the side is clear: of a flat oval's flat the flat, of a curved side the whole duct, as the
 * collar is cut to its curve. It may be as long as what bends, changes of section and the run's ends leave straight.
 */
final class TakeoffRules {
    private static final double HAIR_MM = 0.01;

    private final ToldEnd end;
    private final Course main;
    private final List<Leg> legs;
    private final Troubles troubles;

    /**
     * @param end the end that joins
     * @param main the run it joins
     */
    TakeoffRules(ToldEnd end, Pathway main, Troubles troubles) {
        this.end = end;
        this.main = main.course();
        this.legs = main.legs();
        this.troubles = troubles;
    }

    /**
     * Tells what is wrong, if anything.
     *
     * @param along where it joins
     * @param own the leg that leaves or arrives there
     * @param opening its section
     */
    void check(Pathway.Along along, Leg own, Cross opening) {
        Leg leg = along.leg();
        Axis out = Way.outOf(end.side()).orElseThrow().axis();
        if (own.way().axis() != out) {
            troubles.wrong(
                    own.path(),
                    "goes " + own.way().word() + " at the " + end.side() + " side of " + main.id(),
                    "A takeoff goes square to that side first, then bends.");
        } else if (!level(leg)) {
            troubles.wrong(
                    end.path(),
                    main.id() + " slants or changes its section at " + leg.path() + ", where this joins",
                    "Join it where " + main.id() + " is straight.");
        } else {
            across(leg, opening, Slabs.third(leg.way().axis(), out), out);
            length(
                    leg,
                    along.share() * leg.alongMm(),
                    opening.size(leg.way().axis()).valueMm());
        }
    }

    /** Whether its sides lie along its axis. */
    private static boolean level(Leg leg) {
        double aside = leg.to().at().distance(leg.from().at()) - leg.alongMm();
        return leg.start().same(leg.end()) && aside < HAIR_MM * HAIR_MM;
    }

    private void across(Leg leg, Cross opening, Axis across, Axis out) {
        double side = leg.start().size(across).valueMm();
        double depth = leg.start().size(out).valueMm();
        boolean flat = leg.start().form() == Cross.Form.OVAL && side > depth;
        double room = flat ? side - depth : side;
        double size = opening.size(across).valueMm();
        if (size > room + HAIR_MM) {
            String word = across == Axis.Z ? " high" : " wide";
            troubles.wrong(
                    end.path(),
                    "an opening " + AxisPlacing.number(size) + word + " is larger than the " + end.side() + " side of "
                            + main.id() + ", " + AxisPlacing.number(room) + word + (flat ? " where it is flat" : ""),
                    "Begin with " + AxisPlacing.number(room) + " or less, and widen after it.");
        }
    }

    private void length(Leg leg, double placeMm, double longMm) {
        int i = legs.indexOf(leg);
        double before = placeMm + back(i) - longMm / 2;
        double after = leg.alongMm() - placeMm + forth(i) - longMm / 2;
        if (before >= -HAIR_MM && after >= -HAIR_MM) {
            return;
        }
        double station = placeMm;
        for (Leg earlier : legs.subList(0, i)) {
            station += earlier.to().at().distance(earlier.from().at());
        }
        troubles.wrong(
                end.after().orElseThrow().path(),
                "an opening " + AxisPlacing.number(longMm) + " long reaches "
                        + AxisPlacing.number(-Math.min(before, after)) + " over the edge of " + main.id()
                        + "'s straight there",
                before + after < -HAIR_MM
                        ? "That straight is " + AxisPlacing.number(before + after + longMm) + " long in all."
                        : "It lies within from " + AxisPlacing.number(station - before) + " to "
                                + AxisPlacing.number(station + after) + ".");
    }

    /** How far the straight goes on before a leg begins; less than nothing where a bend takes some of it. */
    private double back(int i) {
        if (i == 0) {
            return 0;
        }
        Leg leg = legs.get(i);
        Leg earlier = legs.get(i - 1);
        if (LegShapes.corner(earlier, leg)) {
            return -bend(leg, earlier.way().axis(), leg.start());
        }
        return on(leg, earlier) ? earlier.alongMm() + back(i - 1) : 0;
    }

    private double forth(int i) {
        if (i + 1 == legs.size()) {
            return 0;
        }
        Leg leg = legs.get(i);
        Leg next = legs.get(i + 1);
        if (LegShapes.corner(leg, next)) {
            return -bend(next, next.way().axis(), leg.end());
        }
        return on(leg, next) ? next.alongMm() + forth(i + 1) : 0;
    }

    /** What a bend takes of a leg: its radius; where it is mitred half the clear size in its plane. */
    private static double bend(Leg after, Axis inPlane, Cross section) {
        return after.bend().orElseGet(() -> section.size(inPlane).times(0.5)).valueMm();
    }

    private static boolean on(Leg leg, Leg other) {
        return other.way() == leg.way()
                && other.trailer().equals(leg.trailer())
                && other.start().same(leg.start())
                && level(other);
    }
}
