package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The signed distance between things, with certified bounds and witness points, in one call.
 *
 * <p>For many pairs keep a {@link PairDistance} and measure again and again without allocating.
 */
public final class Clearance {
    private Clearance() {}

    /**
     * Measures two solids.
     *
     * @param a first solid
     * @param b second solid
     * @return the gap, with piece indices 0
     */
    public static Gap between(Solid a, Solid b) {
        PairDistance pair = new PairDistance();
        pair.measure(a, b);
        return pair.gap();
    }

    /**
     * Measures two bodies: the least signed distance over all pairs of their solids, so that for an overlap the
     * deepest pair speaks.
     *
     * @param a first body
     * @param b second body
     * @return the gap of the governing pair, with its piece indices; of equals the first
     */
    public static Gap between(Body a, Body b) {
        PairDistance pair = new PairDistance();
        double lower = Double.POSITIVE_INFINITY;
        double upper = Double.POSITIVE_INFINITY;
        int pieceA = 0;
        int pieceB = 0;
        for (int i = 0; i < a.solids().size(); i++) {
            Box3 box = a.solids().get(i).bounds();
            for (int j = 0; j < b.solids().size(); j++) {
                double far = box.gapTo(b.solids().get(j).bounds());
                if (far > 0 && far > upper) {
                    continue;
                }
                pair.measure(a.solids().get(i), b.solids().get(j));
                lower = Math.min(lower, pair.lowerMm());
                if (pair.upperMm() < upper) {
                    upper = pair.upperMm();
                    pieceA = i;
                    pieceB = j;
                }
            }
        }
        pair.measure(a.solids().get(pieceA), b.solids().get(pieceB));
        Gap gap = pair.gap();
        return new Gap(Math.min(lower, upper), upper, gap.onA(), gap.onB(), gap.direction(), pieceA, pieceB);
    }
}
