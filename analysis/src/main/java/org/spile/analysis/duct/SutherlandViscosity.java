package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The dynamic viscosity of air, by Sutherland's formula.
 *
 * <p>mu = 1.458e-6 T^1.5 / (T + 110.4), T in K. Humidity changes it by less than 1 %, which is left out.
 */
public final class SutherlandViscosity {
    /** Where the formula comes from. */
    public static final String SOURCE = "Sutherland's formula with the constants of ISO 2533:1975";

    /** It holds from this temperature on (K). */
    public static final double LEAST_K = 200;

    /** It holds up to this temperature (K). */
    public static final double MOST_K = 400;

    private SutherlandViscosity() {}

    /**
     * The viscosity (Pa s).
     *
     * @param tempK temperature (K)
     */
    public static Reckoning<Double> paS(double tempK) {
        if (Outside.is(tempK, LEAST_K, MOST_K)) {
            return Outside.refused("A temperature", tempK, LEAST_K, MOST_K, "K", "Sutherland's formula");
        }
        return Reckoning.of(1.458e-6 * tempK * Math.sqrt(tempK) / (tempK + 110.4));
    }
}
