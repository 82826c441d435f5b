package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * A range between two readings of one kind, {@code 60 kg..110 kg}.
 *
 * @param low the lower end
 * @param high the upper end, not below the lower
 */
public record Band(Reading low, Reading high) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the ends are of two kinds or out of order
     */
    public Band {
        Objects.requireNonNull(low, "low");
        if (low.kind() != high.kind() || !(low.value() <= high.value())) {
            throw new IllegalArgumentException("a band goes from low to high: " + low + ", " + high);
        }
    }

    /** This band typed at a path: its ends get {@code [1]} and {@code [2]} behind it. */
    public Band withPath(String path) {
        return new Band(low.withPath(path + "[1]"), high.withPath(path + "[2]"));
    }
}
