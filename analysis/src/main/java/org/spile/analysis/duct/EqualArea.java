package org.spile.analysis.duct;

/** The round duct of the same clear area: the size that fits the sum of square millimetres, not the air. */
public final class EqualArea {
    /** Where the formula comes from. */
    public static final String SOURCE = "area of a circle";

    private EqualArea() {}

    /** Its diameter (mm) for an area (mm2). */
    public static double roundMm(double areaMm2) {
        return 2 * Math.sqrt(areaMm2 / Math.PI);
    }
}
