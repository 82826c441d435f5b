package org.spile.geometry.kernel.measure;

/**
 * How far a value may be off, on its own: {@code ± 1} of a material.
 *
 * @param plus how far above, in the base unit, not negative
 * @param minus how far below, in the base unit, not negative
 */
public record Tolerance(double plus, double minus) {
    /** No tolerance. */
    public static final Tolerance NONE = new Tolerance(0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public Tolerance {
        if (!(plus >= 0 && minus >= 0) || Double.isInfinite(plus) || Double.isInfinite(minus)) {
            throw new IllegalArgumentException("a tolerance is finite and not negative: +" + plus + "/-" + minus);
        }
        plus += 0.0;
        minus += 0.0;
    }
}
