package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.List;

/**
 * The choices to choose among: those of which no other is better in one thing and at least as good in all others (Pareto's
 * front). Each of the rest is beaten by one of the front.
 */
final class Front {
    private Front() {}

    /**
     * Which choices are on the front; of equal ones all are.
     *
     * @param worths of each choice, the same number of things in the same order; more is better
     */
    static List<Boolean> of(List<List<Double>> worths) {
        List<Boolean> front = new ArrayList<>();
        for (List<Double> choice : worths) {
            front.add(worths.stream().noneMatch(rival -> beats(rival, choice)));
        }
        return front;
    }

    /** Whether one choice is better in something and worse in nothing. */
    static boolean beats(List<Double> one, List<Double> other) {
        boolean better = false;
        for (int i = 0; i < one.size(); i++) {
            if (one.get(i) < other.get(i)) {
                return false;
            }
            better |= one.get(i) > other.get(i);
        }
        return better;
    }
}
