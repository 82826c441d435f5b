package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * One reading's part in a {@link Stack}.
 *
 * @param reading the reading
 * @param factor millimetres of the sum for one base unit of the reading; never zero
 */
public record Layer(Reading reading, double factor) {

    /**
     * Checks the factor.
     *
     * @throws IllegalArgumentException if the factor is zero or not finite
     */
    public Layer {
        Objects.requireNonNull(reading, "reading");
        if (factor == 0 || !Double.isFinite(factor)) {
            throw new IllegalArgumentException("a layer's factor must be finite and not zero: " + factor);
        }
    }

    /** What the reading adds to the sum, in mm. */
    public double addsMm() {
        return factor * reading.value();
    }

    /** Whether it is a movement in use rather than a doubt about a size. */
    public boolean moves() {
        return reading.kind() == Kind.MOVEMENT;
    }

    /** How far the reading's tolerance may pull the sum down, in mm, not negative. */
    public double downMm() {
        return factor > 0 ? factor * reading.minus() : -factor * reading.plus();
    }

    /** How far the reading's tolerance may push the sum up, in mm, not negative. */
    public double upMm() {
        return factor > 0 ? factor * reading.plus() : -factor * reading.minus();
    }
}
