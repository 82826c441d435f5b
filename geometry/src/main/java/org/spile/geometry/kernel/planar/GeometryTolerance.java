package org.spile.geometry.kernel.planar;

/**
 * The one policy for geometric tolerances, in millimetres.
 *
 * <p>Three bands, never mixed: {@link #ARITHMETIC_MM} is what rounding in doubles may spoil at the size of a house
 * (the spacing of doubles at 12 m is 2e-12 mm); {@link #CONTACT_MM} is the band in which two closed bodies count as
 * touching and a demanded margin counts as met; {@link #SHOWN_MM} is the finest step shown to people. A margin that a
 * builder demands is data and belongs to none of them.
 */
public final class GeometryTolerance {
    /** What arithmetic may spoil, in mm. */
    public static final double ARITHMETIC_MM = 1e-9;

    /** Touching is not overlap: bodies this close touch, and margins this close are met, in mm. */
    public static final double CONTACT_MM = 1e-6;

    /** The finest difference shown to people, in mm. */
    public static final double SHOWN_MM = 0.01;

    /** The grid on which plan polygons are overlaid, in steps per mm (one step is 1 µm). */
    public static final double GRID_STEPS_PER_MM = 1000;

    /** The largest coordinate or size the kernel takes, in mm (1 km); beyond it the bands above would not hold. */
    public static final double LARGEST_MM = 1e6;

    private GeometryTolerance() {}

    /**
     * Passes a coordinate or size through if the bands hold for it.
     *
     * @param what name of the value, for the message
     * @param mm the value in mm
     * @return the value, with negative zero made positive
     * @throws IllegalArgumentException if it is not finite or beyond {@link #LARGEST_MM}
     */
    public static double inRange(String what, double mm) {
        if (!(Math.abs(mm) <= LARGEST_MM)) {
            throw new IllegalArgumentException(
                    what + " " + mm + " mm is not a number within " + LARGEST_MM + " mm of the origin");
        }
        return mm + 0.0;
    }

    /**
     * Passes a radius or growth through if it is neither negative nor out of range.
     *
     * @param what name of the value, for the message
     * @param mm the value in mm
     * @return the value
     * @throws IllegalArgumentException if it is negative, not finite or beyond {@link #LARGEST_MM}
     */
    public static double notNegative(String what, double mm) {
        if (inRange(what, mm) < 0) {
            throw new IllegalArgumentException(what + " " + mm + " mm is negative; it must be zero or more");
        }
        return mm + 0.0;
    }
}
