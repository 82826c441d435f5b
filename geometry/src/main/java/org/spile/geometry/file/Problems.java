package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects the problems of one file.
 *
 * <p>They come out in the order of the file, however they were found; a second problem in the same words at the same
 * place is dropped, and a flood is cut off.
 */
final class Problems {
    private static final int MOST = 100;

    private final List<Problem> found = new ArrayList<>();

    void add(Problem problem) {
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    void error(Place place, String path, String says, String advice) {
        add(Problem.error(place, path, says, advice));
    }

    void doubt(Place place, String path, String says, String advice) {
        add(Problem.doubt(place, path, says, advice));
    }

    void addAll(List<Problem> others) {
        others.forEach(this::add);
    }

    boolean none() {
        return found.isEmpty();
    }

    /** Whether so many were found that looking for more helps nobody. */
    boolean flooded() {
        return found.size() > MOST;
    }

    /** All of them, in the order of the file; of a flood the first hundred and a word about the rest. */
    List<Problem> list() {
        List<Problem> sorted = found.stream()
                .sorted(Comparator.comparingInt(
                                (Problem problem) -> problem.place().line())
                        .thenComparingInt(problem -> problem.place().column()))
                .toList();
        if (sorted.size() <= MOST) {
            return sorted;
        }
        var cut = new ArrayList<>(sorted.subList(0, MOST));
        Place place = sorted.get(MOST).place();
        cut.add(Problem.error(place, "", "There are more problems from here on.", "Put these right first."));
        return List.copyOf(cut);
    }
}
