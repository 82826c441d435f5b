package org.spile.analysis.duct;

/**
 * What friction takes per metre of duct, by Darcy and Weisbach: dp / L = f / D * rho v^2 / 2.
 *
 * <p>The friction factor is Darcy's, four times Fanning's.
 */
public final class DarcyWeisbach {
    /** Where the formula comes from. */
    public static final String SOURCE = "Darcy and Weisbach, as in any handbook of hydraulics";

    private DarcyWeisbach() {}

    /**
     * The loss (Pa/m).
     *
     * @param factor Darcy's friction factor
     * @param diameterM hydraulic diameter (m)
     * @param densityKgM3 of the air (kg/m3)
     * @param speedMs true mean speed, flow over clear area (m/s)
     */
    public static double paPerM(double factor, double diameterM, double densityKgM3, double speedMs) {
        return factor / diameterM * densityKgM3 * speedMs * speedMs / 2;
    }
}
