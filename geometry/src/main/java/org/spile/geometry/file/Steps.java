package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Paths, step by step: keys with points between, items of a list in brackets. */
final class Steps {
    private Steps() {}

    /** {@code a.b[1].c} is {@code a}, {@code b}, {@code [1]}, {@code c}; words that are no path are one step. */
    static List<String> of(String path) {
        return DocumentPath.of(path)
                .map(way ->
                        way.steps().stream().map(DocumentPath.Step::toString).toList())
                .orElse(List.of(path));
    }

    /** One step down. */
    static Optional<Spot> step(Spot spot, String step) {
        if (!step.startsWith("[")) {
            return spot.child(step);
        }
        for (int i = 0; i < spot.items().size(); i++) {
            if (step.equals("[" + (i + 1) + "]")) {
                return Optional.of(spot.items().get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * How far a path leads.
     *
     * @param end the value at its end, if it leads there
     * @param before the path as far as it leads
     * @param missing the first step that isn't there; empty if none
     * @param present what is there in place of the missing step
     */
    record Walk(Optional<Spot> end, String before, String missing, List<String> present) {
        /** The path as far as it leads, and one step further. */
        String with(String step) {
            return before.isEmpty() || step.startsWith("[") ? before + step : before + "." + step;
        }
    }

    /** Walks down from a value. */
    static Walk walk(Spot from, String path) {
        Spot at = from;
        for (String step : of(path)) {
            Optional<Spot> next = step(at, step);
            if (next.isEmpty()) {
                return new Walk(Optional.empty(), at.path(), step, present(at));
            }
            at = next.get();
        }
        return new Walk(Optional.of(at), at.path(), "", List.of());
    }

    private static List<String> present(Spot spot) {
        var names = new ArrayList<String>();
        spot.entries().forEach(entry -> names.add(entry.key()));
        for (int i = 0; i < spot.items().size(); i++) {
            names.add("[" + (i + 1) + "]");
        }
        return names;
    }
}
