package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The pressure of the air at a height above the sea, in the standard atmosphere.
 *
 * <p>p = 101325 (1 - 0.0065 H / 288.15)^5.25588, H in m. The weather takes up to 5 % from it or adds 3 %.
 */
public final class StandardAtmosphere {
    /** Where the formula comes from. */
    public static final String SOURCE = "ISO 2533:1975, troposphere";

    /** It holds from this height on (m). */
    public static final double LEAST_M = -2000;

    /** It holds up to this height (m). */
    public static final double MOST_M = 11_000;

    private static final double SEA_LEVEL_PA = 101_325;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double COOLS_K_PER_M = 0.0065;
    private static final double EXPONENT = 5.25588;

    private StandardAtmosphere() {}

    /**
     * The pressure (Pa).
     *
     * @param altitudeM geopotential height above the sea (m)
     */
    public static Reckoning<Double> pressurePa(double altitudeM) {
        if (Outside.is(altitudeM, LEAST_M, MOST_M)) {
            return Outside.refused("An altitude", altitudeM, LEAST_M, MOST_M, "m", "the standard atmosphere");
        }
        return Reckoning.of(SEA_LEVEL_PA * Math.pow(1 - COOLS_K_PER_M * altitudeM / SEA_LEVEL_K, EXPONENT));
    }
}
