package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;

/**
 * The handbooks' round equivalent of a flat oval: De = 1.55 A^0.625 / P^0.25, with the clear area A and the perimeter P.
 *
 * <p>How flat the tested ducts were is not known to us; it is held to the 8:1 of the rectangles.
 */
public final class HeytDiazEquivalent {
    /** Where the formula comes from. */
    public static final String SOURCE =
            "Heyt and Diaz, Pressure drop in flat-oval spiral air duct, ASHRAE Trans. 81 (1975), from two reference pages";

    /** It is used up to this ratio of the axes; our own bound. */
    public static final double MOST_ASPECT = 8;

    private HeytDiazEquivalent() {}

    /** Its diameter (mm). */
    public static Reckoning<Double> mm(Section.FlatOval oval) {
        double aspect = Aspect.of(oval);
        if (Outside.is(aspect, 1, MOST_ASPECT)) {
            return Outside.refused("A ratio of the axes", aspect, 1, MOST_ASPECT, "", "the flat oval formula");
        }
        return Reckoning.of(beyondTestsMm(oval));
    }

    /** The formula for any axes, tested or not: one opinion among others, never the only one. */
    static double beyondTestsMm(Section.FlatOval oval) {
        return 1.55 * Math.pow(oval.areaMm2(), 0.625) / Math.pow(oval.perimeterMm(), 0.25);
    }
}
