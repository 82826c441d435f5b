package org.spile.geometry.kernel.measure;

import java.util.List;

/**
 * Where something lies along one axis: one reading, or the two edges read off one tape.
 *
 * @param readings one or two lengths, the lower first
 * @param outward whether they count away from the thing measured from, instead of into it
 */
public record Position(List<Reading> readings, boolean outward) {

    /**
     * Checks the readings.
     *
     * @throws IllegalArgumentException unless there are one or two of them
     */
    public Position {
        readings = List.copyOf(readings);
        if (readings.isEmpty() || readings.size() > 2) {
            throw new IllegalArgumentException("a position has one or two readings: " + readings);
        }
    }

    /** Whether both edges were given. */
    public boolean pair() {
        return readings.size() == 2;
    }

    /** The first reading: the only one, or the lower edge. */
    public Reading first() {
        return readings.get(0);
    }

    /** The last reading: the only one, or the upper edge. */
    public Reading last() {
        return readings.get(readings.size() - 1);
    }

    /** This position typed at a path; the edges of a pair get {@code [1]} and {@code [2]} behind it. */
    public Position withPath(String path) {
        return pair()
                ? new Position(List.of(first().withPath(path + "[1]"), last().withPath(path + "[2]")), outward)
                : new Position(List.of(first().withPath(path)), outward);
    }
}
