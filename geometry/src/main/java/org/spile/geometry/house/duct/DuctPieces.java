package org.spile.geometry.house.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.solid.Body;

/**
 * Cuts legs into the pieces that a run is made of.
 *
 * <p>A bend with a radius takes that radius off either leg. A mitred bend takes half the duct's clear size in the plane of
 * the bend off either, or half of a leg too short for that. What is left of a leg is straight, an offset or a transition.
 */
public final class DuctPieces {
    private static final double NOTHING_MM = 1e-6;

    private final List<DuctLeg> legs;
    private final List<LegBodies> bodies;
    private final Optional<Tap> from;
    private final Optional<Tap> to;
    private final List<LegCut> cuts = new ArrayList<>();
    private final List<DuctPiece> pieces = new ArrayList<>();
    private double station;

    private DuctPieces(List<DuctLeg> legs, List<LegBodies> bodies, Optional<Tap> from, Optional<Tap> to) {
        this.legs = legs;
        this.bodies = bodies;
        this.from = from;
        this.to = to;
        for (int i = 0; i < legs.size(); i++) {
            cuts.add(new LegCut(legs, i));
        }
    }

    /**
     * The pieces of a run in flow order.
     *
     * @param legs in flow order
     * @param bodies the outside of each
     * @param screws in each joint
     * @param from the run it leaves, if it leaves the side of one
     * @param to the run it joins, if it joins the side of one
     * @throws IllegalArgumentException if there are not as many bodies as legs, or bends leave less than nothing of a leg
     */
    public static List<DuctPiece> of(
            List<DuctLeg> legs, List<LegBodies> bodies, Screws screws, Optional<Tap> from, Optional<Tap> to) {
        if (legs.size() != bodies.size()) {
            throw new IllegalArgumentException(legs.size() + " legs with " + bodies.size() + " bodies");
        }
        List<DuctPiece> made = new DuctPieces(legs, bodies, from, to).made();
        return List.copyOf(screws.none() ? made : new Joints(screws).screwed(made));
    }

    private List<DuctPiece> made() {
        for (int i = 0; i < legs.size(); i++) {
            LegCut cut = cuts.get(i);
            if (cut.cornerBefore()) {
                bend(i);
            }
            middle(i, cut);
        }
        return pieces;
    }

    /** What the bends leave of a leg, less the collars at the run's ends. */
    private void middle(int i, LegCut cut) {
        double left = cut.middleMm();
        double skip = i == 0 ? from.map(Tap::wallMm).orElse(0.0) : 0;
        double drop = i + 1 == legs.size() ? to.map(Tap::wallMm).orElse(0.0) : 0;
        double first = Math.min(skip, left);
        double last = Math.min(drop, left - first);
        if (i == 0 && from.isPresent()) {
            collar(i, from.get(), cut.middle(0, left - first), first);
        }
        if (left - first - last > NOTHING_MM) {
            double start = station;
            station += (left - first - last) * cut.stationPerMm();
            pieces.add(piece(i, start, cut.middle(first, last)));
        }
        if (i + 1 == legs.size() && to.isPresent()) {
            collar(i, to.get(), cut.middle(left - last, 0), last);
        }
    }

    private void collar(int i, Tap tap, ClearPassage clear, double longMm) {
        double start = station;
        station += longMm * cuts.get(i).stationPerMm();
        pieces.add(new Takeoff(
                legs.get(i), start, station, clear, bodies.get(i).whole(), List.of(), tap.run(), tap.side()));
    }

    private void bend(int i) {
        DuctLeg leg = legs.get(i);
        LegCut before = cuts.get(i - 1);
        LegCut after = cuts.get(i);
        double start = station;
        station += before.afterMm() * before.stationPerMm() + after.beforeMm() * after.stationPerMm();
        if (leg.bend().isPresent()) {
            double radius = leg.bend().get();
            Body outside =
                    LegBodies.union(bodies.get(i - 1).bendAfter(), bodies.get(i).bendBefore());
            ClearPassage arc = new ArcPassage(legs.get(i - 1), leg, radius);
            pieces.add(new RadiusBend(leg, start, station, arc, outside, List.of(), radius));
            return;
        }
        Body outside = LegBodies.union(
                Optional.of(bodies.get(i - 1).whole()),
                Optional.of(bodies.get(i).whole()));
        ClearPassage mitre = new MitrePassage(before.zoneAfter(), after.zoneBefore());
        double corner = before.zoneAfter().lengthMm();
        List<Intrusion> vanes = vanes(leg, after, corner);
        pieces.add(new MitredBend(
                leg, start, station, mitre, outside, vanes, corner, leg.vanes().count()));
    }

    private static List<Intrusion> vanes(DuctLeg leg, LegCut after, double atMm) {
        int count = leg.vanes().count();
        return count == 0
                ? List.of()
                : List.of(new Intrusion(
                        atMm,
                        count * leg.vanes().thickMm() * after.keptMm(),
                        count == 1 ? "1 vane" : count + " vanes"));
    }

    private DuctPiece piece(int i, double start, ClearPassage clear) {
        DuctLeg leg = legs.get(i);
        Body outside = bodies.get(i).straight().orElseGet(() -> bodies.get(i).whole());
        if (leg.transition()) {
            return new Transition(leg, start, station, clear, outside, List.of());
        }
        return cuts.get(i).sheared()
                ? new Offset(leg, start, station, clear, outside, List.of())
                : new Straight(leg, start, station, clear, outside, List.of());
    }
}
