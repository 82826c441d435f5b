package org.spile.geometry.kernel.planar;

/** Sine and cosine that are exact at quarter turns, so that a square turned by 90° stays square to the last bit. */
public final class Turn {
    private static final double NOISE = 1e-15;

    private Turn() {}

    /**
     * The cosine of an angle.
     *
     * @param angleRad angle in radians, finite
     * @return cosine, exactly 0 or ±1 within rounding of a quarter turn
     * @throws IllegalArgumentException if the angle is not finite
     */
    public static double cos(double angleRad) {
        return clean(StrictMath.cos(finite(angleRad)));
    }

    /**
     * The sine of an angle.
     *
     * @param angleRad angle in radians, finite
     * @return sine, exactly 0 or ±1 within rounding of a quarter turn
     * @throws IllegalArgumentException if the angle is not finite
     */
    public static double sin(double angleRad) {
        return clean(StrictMath.sin(finite(angleRad)));
    }

    private static double clean(double ratio) {
        double nearest = Math.rint(ratio);
        return Math.abs(ratio - nearest) < NOISE ? nearest + 0.0 : ratio;
    }

    private static double finite(double angleRad) {
        if (!Double.isFinite(angleRad)) {
            throw new IllegalArgumentException("angle " + angleRad + " rad is not a finite number");
        }
        return angleRad;
    }
}
