package org.spile.geometry.house.material;

/**
 * How far a beam on two supports sags (mm), by the elastic line of straight slender beams: any text on the strength of
 * materials.
 *
 * <p>Range: small sags, up to a tenth of the beam's depth in a span of at least five depths; loads and sizes positive.
 */
public final class BeamSag {
    private BeamSag() {}

    /** Second moment of area of a rectangle, b h^3 / 12 (mm4). */
    public static double rectangleMm4(double wideMm, double highMm) {
        return wideMm * Math.pow(highMm, 3) / 12;
    }

    /** Second moment of area of a full round, pi d^4 / 64 (mm4). */
    public static double roundMm4(double diameterMm) {
        return Math.PI * Math.pow(diameterMm, 4) / 64;
    }

    /**
     * In the middle, under a load there: P L^3 / (48 E I).
     *
     * @param loadN P
     * @param spanMm L
     * @param stiffMpa E
     * @param secondMm4 I
     */
    public static double underMidLoadMm(double loadN, double spanMm, double stiffMpa, double secondMm4) {
        return loadN * Math.pow(spanMm, 3) / (48 * stiffMpa * secondMm4);
    }

    /**
     * In the middle, under a load all along: 5 w L^4 / (384 E I).
     *
     * @param loadNPerMm w
     */
    public static double underEvenLoadMm(double loadNPerMm, double spanMm, double stiffMpa, double secondMm4) {
        return 5 * loadNPerMm * Math.pow(spanMm, 4) / (384 * stiffMpa * secondMm4);
    }
}
