package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/** Friction of a round duct in which the air flows in layers: f = 64 / Re, whatever the roughness. */
public final class LaminarFriction {
    /** Where the formula comes from. */
    public static final String SOURCE = "Hagen and Poiseuille, exact for a circle";

    /** It holds up to this Reynolds number. */
    public static final double MOST_REYNOLDS = 2300;

    private LaminarFriction() {}

    /**
     * Darcy's friction factor.
     *
     * @param reynolds of the flow, more than nothing and up to {@link #MOST_REYNOLDS}
     */
    public static Reckoning<Double> factor(double reynolds) {
        if (!(reynolds > 0 && reynolds <= MOST_REYNOLDS)) {
            return Outside.refused("A Reynolds number", reynolds, 0, MOST_REYNOLDS, "", "laminar flow");
        }
        return Reckoning.of(at(reynolds));
    }

    static double at(double reynolds) {
        return 64 / reynolds;
    }
}
