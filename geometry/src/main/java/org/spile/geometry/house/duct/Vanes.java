package org.spile.geometry.house.duct;

/**
 * Turning vanes in a mitred corner.
 *
 * @param count how many, 0 for none
 * @param thickMm thickness of each, seen edge on
 */
public record Vanes(int count, double thickMm) {
    /** No vanes. */
    public static final Vanes NONE = new Vanes(0, 0);

    /** Refuses less than nothing. */
    public Vanes {
        if (count < 0 || !(thickMm >= 0)) {
            throw new IllegalArgumentException("vanes: " + count + " of " + thickMm + " mm; neither may be negative");
        }
    }
}
