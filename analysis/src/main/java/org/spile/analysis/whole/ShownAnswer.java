package org.spile.analysis.whole;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Summary;
import org.spile.analysis.finding.Verdict;

/**
 * What the findings that a study looks at come to in one point.
 *
 * @param shown which
 * @param verdict the worst among them; empty if there is none
 * @param summary how many came out how
 * @param margin least margin as drawn, of those that have one in the unit of the most decisive
 * @param worst least margin with every tolerance against it
 * @param decisive id of the one that has it
 */
public record ShownAnswer(
        Shown shown,
        Optional<Verdict> verdict,
        Summary summary,
        Optional<Quantity> margin,
        Optional<Quantity> worst,
        Optional<String> decisive) {
    private static final Comparator<Finding> LEAST = Comparator.comparingDouble(
                    (Finding finding) -> finding.worst().orElseThrow().number())
            .thenComparing(Finding::id);

    static ShownAnswer of(Shown shown, List<Finding> findings) {
        List<Finding> mine = findings.stream().filter(shown::takes).toList();
        Optional<Finding> least = mine.stream()
                .filter(finding ->
                        finding.margin().isPresent() && finding.worst().isPresent())
                .min(Comparator.comparing(Finding::verdict).thenComparing(LEAST));
        return new ShownAnswer(
                shown,
                mine.stream().map(Finding::verdict).min(Comparator.naturalOrder()),
                Summary.of(mine),
                least.flatMap(Finding::margin),
                least.flatMap(Finding::worst),
                least.map(Finding::id));
    }

    /** Whether nothing of it fails or is open; what is only weighed bars nothing. */
    boolean fits() {
        return shown.weighed()
                || verdict.map(found -> found == Verdict.PASSES || found == Verdict.TIGHT)
                        .orElse(true);
    }
}
