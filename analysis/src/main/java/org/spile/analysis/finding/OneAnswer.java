package org.spile.analysis.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Makes one finding of those that asked the same question in several stances or situations: the worst one, naming every
 * stance and situation in which the answer is the same.
 */
final class OneAnswer {
    /** Differences that nobody is shown don't make two answers; in the finding's own unit. */
    private static final double SHOWN = 0.005;

    private static final WorstFirst ORDER = new WorstFirst();

    private OneAnswer() {}

    /** One finding for each id, in order of first appearance. */
    static List<Finding> each(List<Finding> findings) {
        Map<String, List<Finding>> byId = new LinkedHashMap<>();
        for (Finding finding : findings) {
            byId.computeIfAbsent(finding.id(), id -> new ArrayList<>()).add(finding);
        }
        return byId.values().stream().map(OneAnswer::of).toList();
    }

    private static Finding of(List<Finding> sameQuestion) {
        Finding worst = sameQuestion.get(0);
        for (Finding finding : sameQuestion) {
            if (worse(finding, worst)) {
                worst = finding;
            }
        }
        Set<String> stances = new LinkedHashSet<>();
        Set<String> situations = new LinkedHashSet<>();
        for (Finding finding : sameQuestion) {
            if (same(finding, worst)) {
                stances.addAll(finding.stance());
                situations.addAll(finding.situation());
            }
        }
        return worst.heldIn(List.copyOf(stances), List.copyOf(situations));
    }

    /** Worse by more than anybody is shown; among equals the first stance speaks, as it is home. */
    private static boolean worse(Finding finding, Finding than) {
        return !same(finding, than) && ORDER.compare(finding, than) < 0;
    }

    private static boolean same(Finding one, Finding other) {
        return one.verdict() == other.verdict()
                && near(one.value(), other.value())
                && near(one.required(), other.required())
                && near(one.margin(), other.margin())
                && near(one.worst(), other.worst());
    }

    private static boolean near(Optional<Quantity> one, Optional<Quantity> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() && other.isEmpty();
        }
        return Objects.equals(one.get().unit(), other.get().unit())
                && Math.abs(one.get().number() - other.get().number()) < SHOWN;
    }
}
