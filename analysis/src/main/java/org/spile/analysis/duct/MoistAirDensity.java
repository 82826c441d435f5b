package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The density of moist air, as a mixture of two ideal gases.
 *
 * <p>rho = (p - pv) / (287.053 T) + pv / (461.523 T), with pv the humidity's share of the {@linkplain SaturationPressure
 * saturation pressure}. Within 0.1 % of the metrologists' equation from -10 to 45 degC.
 */
public final class MoistAirDensity {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "ideal gases; specific gas constants of ISO 2533:1975 (air) and of water vapour";

    private static final double AIR_J_PER_KG_K = 287.053;
    private static final double VAPOUR_J_PER_KG_K = 461.523;

    private MoistAirDensity() {}

    /**
     * The density (kg/m3).
     *
     * @param tempK temperature (K), inside the range of {@link SaturationPressure}
     * @param humidity relative, as a ratio: 50 % is 0.5
     * @param pressurePa of the air (Pa), more than the vapour's
     */
    public static Reckoning<Double> kgM3(double tempK, double humidity, double pressurePa) {
        if (Outside.is(humidity, 0, 1)) {
            return Outside.refused("A relative humidity", humidity, 0, 1, "", "what air can hold");
        }
        return SaturationPressure.pa(tempK).then(saturated -> {
            double vapourPa = humidity * saturated;
            if (!(pressurePa > vapourPa)) {
                return Reckoning.none("A pressure of " + pressurePa + " Pa is no more than the vapour's own.");
            }
            return Reckoning.of(
                    (pressurePa - vapourPa) / (AIR_J_PER_KG_K * tempK) + vapourPa / (VAPOUR_J_PER_KG_K * tempK));
        });
    }
}
