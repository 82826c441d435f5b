package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The handbooks' round equivalent of a rectangle: the pipe that loses as much per metre at the same flow.
 *
 * <p>De = 1.30 (a b)^0.625 / (a + b)^0.25. The speed in that pipe is not the speed in the duct. Rests on tests up to about
 * 8:1; a re-analysis in 2008 finds even these too few (Koch, Building Serv. Eng. Res. Technol. 29, 341).
 */
public final class HuebscherEquivalent {
    /** Where the formula comes from. */
    public static final String SOURCE = "Huebscher (1948), as printed in SMACNA, HVAC Systems Duct Design, chapter 14";

    /** It rests on tests up to this ratio of the sides. */
    public static final double MOST_ASPECT = 8;

    private HuebscherEquivalent() {}

    /**
     * Its diameter (mm).
     *
     * @param aMm and the other side (mm), up to {@link #MOST_ASPECT} times as long or as short
     * @param bMm the other side (mm)
     */
    public static Reckoning<Double> mm(double aMm, double bMm) {
        double aspect = Math.max(aMm, bMm) / Math.min(aMm, bMm);
        if (Outside.is(aspect, 1, MOST_ASPECT)) {
            return Outside.refused("A ratio of the sides", aspect, 1, MOST_ASPECT, "", "the handbooks' formula");
        }
        return Reckoning.of(beyondTestsMm(aMm, bMm));
    }

    /** The formula for any sides, tested or not: one of three opinions on a very flat duct, never the only one. */
    static double beyondTestsMm(double aMm, double bMm) {
        return 1.30 * Math.pow(aMm * bMm, 0.625) / Math.pow(aMm + bMm, 0.25);
    }
}
