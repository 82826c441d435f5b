package org.spile.analysis.duct;

import java.util.function.DoubleUnaryOperator;

/**
 * A number that published methods don't agree on: the one we go by, and the ends between which the true one lies as far as
 * they can tell.
 *
 * @param low the least
 * @param value ours
 * @param high the most
 */
public record Spread(double low, double value, double high) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if ours doesn't lie between the ends
     */
    public Spread {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("out of order: " + low + ", " + value + ", " + high);
        }
    }

    /** A number with nothing to argue about. */
    public static Spread exact(double value) {
        return new Spread(value, value, value);
    }

    /** Another quantity that falls as this one rises, with its own ends. */
    public Spread falling(DoubleUnaryOperator change) {
        return new Spread(change.applyAsDouble(high), change.applyAsDouble(value), change.applyAsDouble(low));
    }

    /** These ends, and further out where another number lies outside. */
    Spread with(double other) {
        return new Spread(Math.min(low, other), value, Math.max(high, other));
    }
}
