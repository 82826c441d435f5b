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
    private final Screws screws;
    private final List<LegCut> cuts = new ArrayList<>();
    private final List<DuctPiece> pieces = new ArrayList<>();
    private double station;

    private DuctPieces(List<DuctLeg> legs, List<LegBodies> bodies, Screws screws) {
        this.legs = legs;
        this.bodies = bodies;
        this.screws = screws;
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
     * @throws IllegalArgumentException if there are not as many bodies as legs, or bends leave less than nothing of a leg
     */
    public static List<DuctPiece> of(List<DuctLeg> legs, List<LegBodies> bodies, Screws screws) {
        if (legs.size() != bodies.size()) {
            throw new IllegalArgumentException(legs.size() + " legs with " + bodies.size() + " bodies");
        }
        return List.copyOf(new DuctPieces(legs, bodies, screws).made());
    }

    private List<DuctPiece> made() {
        for (int i = 0; i < legs.size(); i++) {
            LegCut cut = cuts.get(i);
            if (cut.cornerBefore()) {
                bend(i);
            }
            double left = cut.middleMm();
            if (left > NOTHING_MM) {
                double start = station;
                station += left * cut.stationPerMm();
                pieces.add(piece(i, start));
            }
        }
        return screws.none() ? pieces : new Joints(screws).screwed(pieces);
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

    private DuctPiece piece(int i, double start) {
        DuctLeg leg = legs.get(i);
        Body outside = bodies.get(i).straight().orElseGet(() -> bodies.get(i).whole());
        ClearPassage clear = cuts.get(i).middle();
        if (leg.transition()) {
            return new Transition(leg, start, station, clear, outside, List.of());
        }
        return cuts.get(i).sheared()
                ? new Offset(leg, start, station, clear, outside, List.of())
                : new Straight(leg, start, station, clear, outside, List.of());
    }
}
