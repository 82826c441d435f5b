package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;

/** Whether a gap is enough: yes, no, or between the bounds. A margin met with equality is met. */
public enum Sufficiency {
    /** The gap's lower bound reaches the demand, within the contact tolerance. */
    CLEAR,
    /** The gap's upper bound falls short of the demand by more than the contact tolerance. */
    SHORT,
    /** The demand lies between the gap's bounds. */
    UNDECIDED;

    /**
     * Judges a gap.
     *
     * @param gap the gap found
     * @param demandedMm the clearance demanded in mm
     * @return the verdict
     * @throws IllegalArgumentException if the demand is not a number
     */
    public static Sufficiency of(Gap gap, double demandedMm) {
        return of(gap.lowerMm(), gap.upperMm(), demandedMm);
    }

    /**
     * Judges bounds of a distance.
     *
     * @param lowerMm lower bound in mm
     * @param upperMm upper bound in mm
     * @param demandedMm the clearance demanded in mm
     * @return the verdict
     * @throws IllegalArgumentException if the demand is not a number
     */
    public static Sufficiency of(double lowerMm, double upperMm, double demandedMm) {
        if (Double.isNaN(demandedMm)) {
            throw new IllegalArgumentException("the demanded clearance is not a number");
        }
        if (lowerMm >= demandedMm - GeometryTolerance.CONTACT_MM) {
            return CLEAR;
        }
        return upperMm < demandedMm - GeometryTolerance.CONTACT_MM ? SHORT : UNDECIDED;
    }
}
