package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The pressure of water vapour over water, at which air can hold no more.
 *
 * <p>p = exp(1.2378847e-5 T^2 - 1.9121316e-2 T + 33.93711047 - 6343.1645 / T), T in K. Below freezing it is that over
 * supercooled water, a little more than over ice.
 */
public final class SaturationPressure {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "CIPM-2007 equation for moist air, Picard, Davis, Gläser and Fujii, Metrologia 45 (2008) 149, from memory";

    /** Used from this temperature on (K), -30 degC; our own bound: it counts for little in the density of cold air. */
    public static final double LEAST_K = 243.15;

    /** Used up to this temperature (K), 50 degC; our own bound. */
    public static final double MOST_K = 323.15;

    private SaturationPressure() {}

    /**
     * The pressure (Pa).
     *
     * @param tempK temperature (K)
     */
    public static Reckoning<Double> pa(double tempK) {
        if (Outside.is(tempK, LEAST_K, MOST_K)) {
            return Outside.refused("A temperature", tempK, LEAST_K, MOST_K, "K", "the formula for moist air");
        }
        return Reckoning.of(
                Math.exp(1.2378847e-5 * tempK * tempK - 1.9121316e-2 * tempK + 33.93711047 - 6343.1645 / tempK));
    }
}
