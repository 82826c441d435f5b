package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The nearest that a moving body comes to one that stays, anywhere on its way: nothing is sampled.
 *
 * <p>A signed distance, so that where they meet on the way it is the worst overlap of convex pieces. It is found by branch and
 * bound ({@link TravelSearch}); for slides it is as exact as a distance, for hinges and chains the two bounds may lie
 * as far apart as was allowed.
 *
 * @param parameter where on the way they were found nearest
 * @param nearest their gap there; its upper bound is one for the whole way
 * @param lowerMm they are nowhere nearer than this
 */
public record TravelGap(double parameter, Gap nearest, double lowerMm) {
    /** How far the bounds may lie apart (mm): what is shown, at most. */
    public static final double SHOWN_MM = 0.01;

    /** They come as near as this. */
    public double upperMm() {
        return nearest.upperMm();
    }

    /**
     * Finds the nearest that a body comes to another.
     *
     * @param moving where it lies at parameter 0
     * @param travel how it moves
     * @param from start of the way
     * @param to end of the way, not below its start
     * @param fixed what stays
     * @param apartMm how far the bounds may lie apart, positive
     * @return where they are nearest
     * @throws IllegalArgumentException if the range is upside down or not finite, or {@code apartMm} isn't positive
     */
    public static TravelGap least(Body moving, Travel travel, double from, double to, Body fixed, double apartMm) {
        if (!(from <= to) || !Double.isFinite(to - from)) {
            throw new IllegalArgumentException("no way from " + from + " to " + to);
        }
        if (!(apartMm > 0)) {
            throw new IllegalArgumentException("bounds can't be " + apartMm + " mm apart at most");
        }
        TravelSearch search = new TravelSearch(travel, from, to, apartMm);
        for (Solid one : convex(moving)) {
            for (Solid other : convex(fixed)) {
                search.pair(one, other);
            }
        }
        double at = search.parameter();
        Gap gap = Clearance.between(moving.moved(travel.at(at)), fixed);
        double lower = Math.min(search.lowerMm(), gap.lowerMm());
        return new TravelGap(at, gap, lower);
    }

    private static List<Solid> convex(Body body) {
        List<Solid> pieces = new ArrayList<>();
        for (Solid solid : body.solids()) {
            if (solid instanceof Prism prism && !prism.isConvex()) {
                pieces.addAll(prism.convexParts());
            } else {
                pieces.add(solid);
            }
        }
        return pieces;
    }
}
