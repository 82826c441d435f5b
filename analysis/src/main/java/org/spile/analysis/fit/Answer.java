package org.spile.analysis.fit;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.finding.Where;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A finding with what it takes to seek its remedies.
 *
 * @param finding the answer itself, still without remedies
 * @param outcome the length behind it
 * @param pair the two parts that were held against each other, if it was two parts
 */
record Answer(Finding finding, Outcome outcome, Optional<Pair> pair) {

    /** The answer about a pair of parts. */
    static Answer of(Question question, Pair pair, Demand demand, Optional<Where> where, String head) {
        Outcome outcome = new Outcome(pair.lowMm(), pair.highMm(), pair.stack(), demand);
        return new Answer(
                finding(question, outcome, Optional.of(pair.ends()), where, head), outcome, Optional.of(pair));
    }

    /** The answer about a length that is a sum of readings. */
    static Answer of(Question question, Ends ends, Outcome outcome, String head) {
        return new Answer(
                finding(question, outcome, Optional.of(ends), Optional.empty(), head), outcome, Optional.empty());
    }

    /** The answer that nothing is there that could take the room; it has no length. */
    static Answer nothingThere(Question question, Vector3D at, Demand demand, String because) {
        Finding finding = new Finding(
                question.id(),
                question.check(),
                question.subject(),
                question.against(),
                List.of(question.stance()),
                List.of(),
                Verdict.PASSES,
                Optional.empty(),
                Optional.of(Quantity.mm(demand.mm())),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(at),
                Optional.empty(),
                Optional.empty(),
                because,
                demand.restsOn().stream().toList(),
                List.of(),
                demand.source());
        return new Answer(finding, Outcome.of(Stack.constant(demand.worstMm()), demand), Optional.empty());
    }

    private static Finding finding(
            Question question, Outcome outcome, Optional<Ends> ends, Optional<Where> where, String head) {
        return new Finding(
                question.id(),
                question.check(),
                question.subject(),
                question.against(),
                List.of(question.stance()),
                List.of(),
                outcome.verdict(),
                Optional.of(outcome.value()),
                Optional.of(outcome.required()),
                Optional.of(outcome.margin()),
                Optional.of(outcome.worst()),
                outcome.layers(),
                ends.map(Ends::at),
                ends.map(Ends::to),
                where,
                head + "; " + outcome.says(),
                outcome.restsOn(),
                List.of(),
                outcome.demand().source());
    }
}
