package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * Friction of turbulent flow in a round duct, by Colebrook, solved to the last digits.
 *
 * <p>1 / sqrt(f) = -2 log10(eps / (3.7 D) + 2.51 / (Re sqrt(f))). With x = 1 / sqrt(f) the function x + 2 log10(a + b x)
 * rises and bends down, so Newton's steps from {@linkplain HaalandFriction a start within 2 %} each double the digits: three
 * leave nothing to gain.
 */
public final class ColebrookFriction {
    /** Where the formula comes from. */
    public static final String SOURCE = "Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11 (1939) 133";

    /** It holds from this Reynolds number on. */
    public static final double LEAST_REYNOLDS = 4000;

    /** It is used up to this Reynolds number. */
    public static final double MOST_REYNOLDS = 1e8;

    /** It holds up to this relative roughness. */
    public static final double MOST_ROUGHNESS = 0.05;

    private static final int STEPS = 3;
    private static final double LN_10 = Math.log(10);

    private ColebrookFriction() {}

    /**
     * Darcy's friction factor.
     *
     * @param reynolds from {@link #LEAST_REYNOLDS} to {@link #MOST_REYNOLDS}
     * @param roughness absolute roughness over hydraulic diameter, 0 to {@link #MOST_ROUGHNESS}
     */
    public static Reckoning<Double> factor(double reynolds, double roughness) {
        return inRange(reynolds, roughness).map(yes -> at(reynolds, roughness));
    }

    static Reckoning<Boolean> inRange(double reynolds, double roughness) {
        if (Outside.is(reynolds, LEAST_REYNOLDS, MOST_REYNOLDS)) {
            return Outside.refused(
                    "A Reynolds number", reynolds, LEAST_REYNOLDS, MOST_REYNOLDS, "", "Colebrook's formula");
        }
        if (Outside.is(roughness, 0, MOST_ROUGHNESS)) {
            return Outside.refused("A relative roughness", roughness, 0, MOST_ROUGHNESS, "", "Colebrook's formula");
        }
        return Reckoning.of(true);
    }

    /** The solution, also below the range, for whoever says that he goes there on purpose. */
    static double at(double reynolds, double roughness) {
        double a = roughness / 3.7;
        double b = 2.51 / reynolds;
        double x = HaalandFriction.inverseRoot(reynolds, roughness);
        for (int i = 0; i < STEPS; i++) {
            double inside = a + b * x;
            x -= (x + 2 * Math.log10(inside)) / (1 + 2 * b / (LN_10 * inside));
        }
        return 1 / (x * x);
    }
}
