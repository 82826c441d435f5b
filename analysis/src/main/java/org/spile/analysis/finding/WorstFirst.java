package org.spile.analysis.finding;

import java.util.Comparator;
import java.util.Optional;

/**
 * The order in which findings are shown: what fails before what is tight, before what isn't known, before what passes;
 * among equals the least margin first, then the least worst case, and then the id, so that the order never depends on chance.
 */
final class WorstFirst implements Comparator<Finding> {
    @Override
    public int compare(Finding one, Finding other) {
        int byVerdict = one.verdict().compareTo(other.verdict());
        if (byVerdict != 0) {
            return byVerdict;
        }
        int byMargin = Double.compare(decisive(one), decisive(other));
        int byWorst = byMargin != 0 ? byMargin : Double.compare(number(one.worst()), number(other.worst()));
        return byWorst != 0 ? byWorst : one.id().compareTo(other.id());
    }

    /** What is tight is as bad as its worst case; what fails or passes is told by its margin as drawn. */
    private static double decisive(Finding finding) {
        Optional<Quantity> margin = finding.verdict() == Verdict.TIGHT ? finding.worst() : finding.margin();
        return number(margin);
    }

    private static double number(Optional<Quantity> quantity) {
        return quantity.map(Quantity::number).orElse(Double.POSITIVE_INFINITY);
    }
}
