package org.spile.geometry.house.spot;

import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Turn;

/**
 * Arithmetic on sums of readings that isn't a sum: the value is exact, the readings' factors are the first-order term.
 *
 * <p>A {@link Stack} is a value with a gradient over readings; these are the product, quotient and chain rules.
 */
public final class FirstOrder {
    private FirstOrder() {}

    /** {@code a b}. */
    public static Stack product(Stack a, Stack b) {
        double av = a.valueMm();
        double bv = b.valueMm();
        return exactly(av * bv, a.times(bv).plus(b.times(av)));
    }

    /**
     * {@code a / b}.
     *
     * @throws IllegalArgumentException if b is zero
     */
    public static Stack quotient(Stack a, Stack b) {
        double bv = b.valueMm();
        if (bv == 0) {
            throw new IllegalArgumentException("division of " + a + " by nothing: " + b);
        }
        double q = a.valueMm() / bv;
        return exactly(q, a.times(1 / bv).minus(b.times(q / bv)));
    }

    /** Sine of an angle in degrees; exact at quarter turns. */
    public static Stack sine(Stack deg) {
        double rad = Math.toRadians(deg.valueMm());
        return exactly(Turn.sin(rad), deg.times(Math.toRadians(1) * Turn.cos(rad)));
    }

    /** Cosine of an angle in degrees; exact at quarter turns. */
    public static Stack cosine(Stack deg) {
        double rad = Math.toRadians(deg.valueMm());
        return exactly(Turn.cos(rad), deg.times(-Math.toRadians(1) * Turn.sin(rad)));
    }

    /**
     * Square root.
     *
     * @throws IllegalArgumentException unless it is positive
     */
    public static Stack root(Stack a) {
        double v = a.valueMm();
        if (!(v > 0)) {
            throw new IllegalArgumentException("root of what isn't positive: " + a);
        }
        double root = Math.sqrt(v);
        return exactly(root, a.times(0.5 / root));
    }

    /** The lesser by value; the first of equals. */
    public static Stack lesser(Stack a, Stack b) {
        return b.valueMm() < a.valueMm() ? b : a;
    }

    /** The greater by value; the first of equals. */
    public static Stack greater(Stack a, Stack b) {
        return b.valueMm() > a.valueMm() ? b : a;
    }

    /** The magnitude. */
    public static Stack magnitude(Stack a) {
        return a.valueMm() < 0 ? a.times(-1) : a;
    }

    /** The share {@code t} of the way from a to b, for a fixed share. */
    public static Stack between(Stack a, Stack b, double t) {
        return a.times(1 - t).plus(b.times(t));
    }

    /** That sum with exactly this value: only its exact part is changed. */
    public static Stack exactly(double value, Stack sum) {
        return sum.plus(value - sum.valueMm());
    }
}
