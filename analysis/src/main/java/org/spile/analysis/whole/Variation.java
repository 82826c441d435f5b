package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.List;

/**
 * A value of the house file that is swept, or several that are swept together.
 *
 * @param paths where it stands; each gets the same value
 * @param unit of the values; empty for plain numbers
 * @param values rising, at least one
 * @param aim which end one would rather have
 */
public record Variation(List<String> paths, String unit, List<Double> values, Aim aim) {
    private static final double FINE = 1e9;

    /** Beyond this much of a step a last value counts as the end of its range. */
    private static final double SLACK = 1e-9;

    /** Copies the lists. */
    public Variation {
        paths = List.copyOf(paths);
        values = List.copyOf(values);
        if (paths.isEmpty() || values.isEmpty()) {
            throw new IllegalArgumentException("a variation needs a path and a value");
        }
    }

    /** Its paths as they were typed. */
    public String says() {
        return String.join("+", paths);
    }

    /**
     * The values of a range: its start, and from there by steps as far as its end.
     *
     * @param from first
     * @param to last, not below it
     * @param step above 0
     * @throws IllegalArgumentException if the range has no end or goes down
     */
    public static List<Double> range(double from, double to, double step) {
        if (!(step > 0 && from <= to)) {
            throw new IllegalArgumentException("no range: " + from + " to " + to + " by " + step);
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < count(from, to, step); i++) {
            // Multiplied, not added up: the fiftieth value is as exact as the second.
            values.add(Math.rint((from + i * step) * FINE) / FINE);
        }
        return values;
    }

    /** How many values a range has; for telling before making them that it has too many. */
    public static long count(double from, double to, double step) {
        return (long) Math.floor((to - from) / step + SLACK) + 1;
    }
}
