package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * Jones' factor for rectangles: with it the Reynolds number of a flat duct finds the friction factor of a round one, laminar
 * and turbulent alike.
 *
 * <p>Re* = phi* Re(Dh) with phi* = 2/3 + 11/24 (b / a) (2 - b / a), b the short side. Laminar it gives the exact {@linkplain
 * ShahLondonLaminar solution} within 2 %; in smooth ducts its turbulent answers scatter by about 5 % either way.
 */
public final class JonesFactor {
    /** Where the formula comes from. */
    public static final String SOURCE = "Jones, An improvement in the calculation of turbulent friction in rectangular"
            + " ducts, J. Fluids Eng. 98 (1976) 173, from memory";

    /** How far its answers scatter, as a share of the loss. */
    public static final double SCATTER = 0.05;

    /** What it tends to between two endless plates. */
    public static final double PLATES = 2.0 / 3;

    private JonesFactor() {}

    /**
     * The factor phi*.
     *
     * @param shortOverLong short side over long side, more than nothing and up to 1
     */
    public static Reckoning<Double> of(double shortOverLong) {
        if (!(shortOverLong > 0 && shortOverLong <= 1)) {
            return Outside.refused("A short side over a long one", shortOverLong, 0, 1, "", "a rectangle");
        }
        return Reckoning.of(at(shortOverLong));
    }

    static double at(double shortOverLong) {
        return PLATES + 11.0 / 24 * shortOverLong * (2 - shortOverLong);
    }
}
