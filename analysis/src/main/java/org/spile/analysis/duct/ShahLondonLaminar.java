package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * Laminar friction of a rectangle: f Re(Dh) as a polynomial in the short side over the long one.
 *
 * <p>f Re = 96 (1 - 1.3553 s + 1.9467 s^2 - 1.7012 s^3 + 0.9564 s^4 - 0.2537 s^5), within 0.1 % of the exact series.
 */
public final class ShahLondonLaminar {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "Shah and London, Laminar Flow Forced Convection in Ducts (1978), for rectangular ducts";

    private ShahLondonLaminar() {}

    /**
     * Darcy's friction factor times the Reynolds number on the hydraulic diameter.
     *
     * @param shortOverLong short side over long side, 0 (two plates) to 1
     */
    public static Reckoning<Double> factorTimesReynolds(double shortOverLong) {
        if (Outside.is(shortOverLong, 0, 1)) {
            return Outside.refused("A short side over a long one", shortOverLong, 0, 1, "", "a rectangle");
        }
        double s = shortOverLong;
        return Reckoning.of(96 * (1 + s * (-1.3553 + s * (1.9467 + s * (-1.7012 + s * (0.9564 + s * -0.2537))))));
    }
}
