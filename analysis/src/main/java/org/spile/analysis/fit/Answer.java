package org.spile.analysis.fit;

import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.finding.Where;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Box3;

/**
 * An answer with what it takes to keep it and to seek its remedies.
 *
 * @param question what was asked
 * @param outcome the length behind it
 * @param length whether there is such a length; if nothing is there that could take the room, there isn't
 * @param ends where it was measured
 * @param where along a run
 * @param head the first half of its sentence
 * @param pair the two parts it is about, if it is about two
 * @param place whatever changes over or under it puts the answer in doubt; empty: any change does
 */
record Answer(
        Question question,
        Outcome outcome,
        boolean length,
        Optional<Ends> ends,
        Optional<Where> where,
        String head,
        Optional<Pair> pair,
        Optional<Box3> place) {

    /** The answer about a pair of parts. */
    static Answer of(Question question, Pair pair, Demand demand, Optional<Where> where, String head) {
        Outcome outcome = new Outcome(pair.lowMm(), pair.highMm(), pair.stack(), demand);
        Box3 both = pair.subject().body().bounds().with(pair.against().body().bounds());
        return new Answer(
                question, outcome, true, Optional.of(pair.ends()), where, head, Optional.of(pair), Optional.of(both));
    }

    /** The answer about a length that is a sum of readings, at a place. */
    static Answer of(Question question, Ends ends, Outcome outcome, String head, Box3 place) {
        return new Answer(
                question,
                outcome,
                true,
                Optional.of(ends),
                Optional.empty(),
                head,
                Optional.empty(),
                Optional.of(place));
    }

    /** The answer that nothing is there that could take the room, up to a distance. */
    static Answer nothingThere(Question question, Face face, double upToMm, Demand demand, String head) {
        Outcome outcome = Outcome.of(Stack.constant(upToMm), demand);
        Ends ends = new Ends(face.middle(), face.middle().add(face.normal().multiply(upToMm)));
        return new Answer(
                question,
                outcome,
                false,
                Optional.of(ends),
                Optional.empty(),
                head,
                Optional.empty(),
                Optional.of(face.swept(upToMm).bounds()));
    }

    String id() {
        return question.id();
    }

    /** This answer, which any change puts in doubt, as that something is the nearest. */
    Answer fleeting() {
        return new Answer(question, outcome, length, ends, where, head, pair, Optional.empty());
    }

    /** Whether it still holds where some things changed. */
    boolean holdsAfter(Changes changes) {
        if (place.isEmpty()) {
            return false;
        }
        return pair.map(two -> !changes.concern(two.subject()) && !changes.concern(two.against()))
                .orElseGet(() -> !changes.concern(place.get()));
    }

    /** The same answer in another stance. */
    Answer in(String stance) {
        return new Answer(question.in(stance), outcome, length, ends, where, head, pair, place);
    }

    Finding finding() {
        return new Finding(
                question.id(),
                question.check(),
                question.subject(),
                question.against(),
                List.of(question.stance()),
                List.of(),
                length ? outcome.verdict() : Verdict.PASSES,
                known(outcome.value()),
                Optional.of(outcome.required()),
                known(outcome.margin()),
                known(outcome.worst()),
                length ? outcome.likely() : Optional.empty(),
                Layer.of(outcome.stack()),
                ends.map(Ends::at),
                length ? ends.map(Ends::to) : Optional.empty(),
                where,
                head + "; " + outcome.says(),
                outcome.restsOn(),
                List.of(),
                outcome.demand().source());
    }

    private Optional<Quantity> known(Quantity quantity) {
        return length ? Optional.of(quantity) : Optional.empty();
    }
}
