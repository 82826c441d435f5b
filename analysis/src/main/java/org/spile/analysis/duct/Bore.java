package org.spile.analysis.duct;

import java.util.function.DoubleBinaryOperator;

/**
 * One way of looking at a duct as a pipe: which diameter friction acts on, which area the air goes through, and which share
 * of the Reynolds number finds the factor.
 *
 * <p>With the hydraulic diameter, the true area and phi* it is method J; with 1 in place of phi* method D; with the handbook
 * equivalent's diameter and area method H, whose speed is not the speed in the duct.
 *
 * @param diameterM for the roughness, the Reynolds number and the loss (m)
 * @param areaM2 for the speed (m2)
 * @param reynoldsFactor times the Reynolds number
 */
record Bore(double diameterM, double areaM2, double reynoldsFactor) {
    static Bore round(double diameterM) {
        return new Bore(diameterM, Math.PI * diameterM * diameterM / 4, 1);
    }

    double reynolds(double flowM3s, Air air) {
        return reynoldsFactor * flowM3s / areaM2 * diameterM / air.kinematicM2S();
    }

    /**
     * What friction takes (Pa/m).
     *
     * @param law friction factor for a Reynolds number and a relative roughness
     */
    double paPerM(double flowM3s, double roughM, Air air, DoubleBinaryOperator law) {
        if (flowM3s == 0) {
            return 0;
        }
        double factor = law.applyAsDouble(reynolds(flowM3s, air), roughM / diameterM);
        return DarcyWeisbach.paPerM(factor, diameterM, air.densityKgM3(), flowM3s / areaM2);
    }
}
