package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * One friction factor for every flow, so that what a duct loses grows steadily with what it carries.
 *
 * <p>Up to Re 2300 it is the {@linkplain LaminarFriction laminar} one, from 4000 on {@linkplain ColebrookFriction
 * Colebrook's}. Between them nature has not decided; we draw a straight line over Re and say {@linkplain
 * #TRANSITION_SHARE how little} it is worth. On the line f rises with Re, so the loss rises too.
 */
public final class FrictionPolicy {
    /** Where it comes from. */
    public static final String SOURCE = "straight line between Hagen-Poiseuille and Colebrook: our policy, no source";

    /** How far the loss may be off between the two, as a share of it; from no source. */
    public static final double TRANSITION_SHARE = 0.3;

    private FrictionPolicy() {}

    /**
     * Darcy's friction factor.
     *
     * @param reynolds more than nothing, up to {@link ColebrookFriction#MOST_REYNOLDS}
     * @param roughness absolute roughness over hydraulic diameter, 0 to {@link ColebrookFriction#MOST_ROUGHNESS}
     */
    public static Reckoning<Double> factor(double reynolds, double roughness) {
        return inRange(reynolds, roughness).map(yes -> at(reynolds, roughness));
    }

    /**
     * The factor as if the flow were turbulent, however slow it is: for sizing, where a duct that is only wide enough as long
     * as nothing stirs the air is not wide enough.
     */
    public static Reckoning<Double> turbulent(double reynolds, double roughness) {
        return inRange(reynolds, roughness).map(yes -> ColebrookFriction.at(reynolds, roughness));
    }

    private static Reckoning<Boolean> inRange(double reynolds, double roughness) {
        if (!(reynolds > 0)) {
            return Reckoning.none("A Reynolds number of " + reynolds + " is no flow.");
        }
        return ColebrookFriction.inRange(Math.max(reynolds, ColebrookFriction.LEAST_REYNOLDS), roughness);
    }

    static double at(double reynolds, double roughness) {
        double low = LaminarFriction.MOST_REYNOLDS;
        double high = ColebrookFriction.LEAST_REYNOLDS;
        if (reynolds <= low) {
            return LaminarFriction.at(reynolds);
        }
        if (reynolds >= high) {
            return ColebrookFriction.at(reynolds, roughness);
        }
        double share = (reynolds - low) / (high - low);
        return (1 - share) * LaminarFriction.at(low) + share * ColebrookFriction.at(high, roughness);
    }
}
