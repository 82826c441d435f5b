package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * A direct formula for turbulent friction, within about 2 % of Colebrook's: where his is solved from.
 *
 * <p>1 / sqrt(f) = -1.8 log10((eps / D / 3.7)^1.11 + 6.9 / Re).
 */
public final class HaalandFriction {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "Haaland, Simple and explicit formulas for the friction factor in turbulent pipe flow, J. Fluids Eng. 105 (1983) 89";

    private HaalandFriction() {}

    /**
     * Darcy's friction factor.
     *
     * @param reynolds inside the range of {@link ColebrookFriction}
     * @param roughness absolute roughness over diameter, inside the range of {@link ColebrookFriction}
     */
    public static Reckoning<Double> factor(double reynolds, double roughness) {
        return ColebrookFriction.inRange(reynolds, roughness).map(yes -> {
            double root = inverseRoot(reynolds, roughness);
            return 1 / (root * root);
        });
    }

    /** 1 / sqrt(f). */
    static double inverseRoot(double reynolds, double roughness) {
        return -1.8 * Math.log10(Math.pow(roughness / 3.7, 1.11) + 6.9 / reynolds);
    }
}
