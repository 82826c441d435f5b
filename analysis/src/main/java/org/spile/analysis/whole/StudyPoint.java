package org.spile.analysis.whole;

import java.util.List;
import java.util.Optional;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.finding.Verdict;

/**
 * One choice of the values that a study sweeps, and what comes of it.
 *
 * @param values one for each variation, in its unit
 * @param trouble why there is no such house; empty if there is
 * @param answers one for each thing shown; none if there is no such house
 * @param carried the runs shown, with what each is worth
 * @param front whether no other choice is better in one thing and as good in all others
 */
public record StudyPoint(
        List<Double> values,
        Optional<String> trouble,
        List<ShownAnswer> answers,
        List<Carried> carried,
        boolean front) {
    /** Copies the lists. */
    public StudyPoint {
        values = List.copyOf(values);
        answers = List.copyOf(answers);
        carried = List.copyOf(carried);
    }

    /**
     * What a run is worth.
     *
     * @param run its path
     * @param roundMm the round duct that loses as much per metre at its flow; empty if that isn't known
     */
    public record Carried(String run, Optional<Spread> roundMm) {}

    /** Whether there is such a house and nothing demanded fails or is open in it. */
    public boolean fits() {
        return trouble.isEmpty() && answers.stream().allMatch(ShownAnswer::fits);
    }

    /** The worst verdict of all that is demanded; empty if there is no such house, or nothing is demanded. */
    public Optional<Verdict> verdict() {
        return answers.stream()
                .filter(answer -> !answer.shown().weighed())
                .flatMap(answer -> answer.verdict().stream())
                .min(Verdict::compareTo);
    }

    StudyPoint onFront(boolean whether) {
        return new StudyPoint(values, trouble, answers, carried, whether);
    }
}
