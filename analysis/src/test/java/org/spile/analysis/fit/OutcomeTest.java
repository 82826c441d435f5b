package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Verdicts at their borders, and the sentences that go with them, with real numbers. */
class OutcomeTest {
    private static final Demand FIVE = new Demand(5, 0, "a test", Optional.empty());

    @Test
    void equalityIsMet() {
        assertEquals(Verdict.PASSES, exact(5).verdict());
        assertEquals(Verdict.PASSES, exact(5 - 0.9e-6).verdict());
        assertEquals(Verdict.FAILS, exact(5 - 1.1e-6).verdict());
    }

    @Test
    void tightBetweenDrawnAndWorst() {
        assertEquals(Verdict.PASSES, within(6, 1).verdict());
        assertEquals(Verdict.TIGHT, within(6, 1.001).verdict());
        assertEquals(Verdict.TIGHT, within(5, 1).verdict());
        assertEquals(Verdict.FAILS, within(4.99, 1).verdict());
    }

    @Test
    void betweenTheBoundsIsNotKnown() {
        Outcome open = new Outcome(4.9, 5.1, Stack.constant(5), FIVE);
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertEquals("5 mm asked: open, as the gap is known only to lie between 4.9 mm and 5.1 mm.", open.says());
        assertEquals(Verdict.FAILS, new Outcome(4.9, 4.99, Stack.constant(5), FIVE).verdict());
        assertEquals(Verdict.PASSES, new Outcome(5, 5.1, Stack.constant(5), FIVE).verdict());
    }

    /** A demand of 230 ± 4 is at worst 234: 235 ± 2 leaves 5 as drawn, -1 at worst. */
    @Test
    void demandsToleranceCounts() {
        Reading asked = new Reading("units.cooler.void", 230, 4, 4, Origin.MAKER, true, Kind.LENGTH, "230 ± 4 maker");
        Outcome outcome = Outcome.of(stack(235, 2), Demand.maker(asked));
        assertEquals(5, outcome.marginMm(), 1e-9);
        assertEquals(-1, outcome.worstMm(), 1e-9);
        assertEquals(Verdict.TIGHT, outcome.verdict());
    }

    @Test
    void sentencesSayWhatCameOfIt() {
        assertEquals(
                "5 mm asked: 2 mm short, 3 mm with every tolerance against it.",
                within(3, 1).says());
        assertEquals(
                "5 mm asked: met as drawn, 0.5 mm short with every tolerance against it.",
                within(5.5, 1).says());
        assertEquals(
                "5 mm asked: met with every tolerance against it, by 1 mm.",
                within(7, 1).says());
        assertEquals("5 mm asked: met.", exact(7).says());
    }

    @Test
    void sentencesDoNotDenyThemselves() {
        assertEquals("5 mm asked: 0.0004 mm short.", exact(4.9996).says());
        assertEquals("4.9996 mm", Mm.besides(4.9996, 5));
        assertEquals("5 mm", Mm.besides(5, 5));
        assertEquals("12.35 mm", Mm.text(12.345678));
    }

    private static Outcome exact(double mm) {
        return new Outcome(mm, mm, Stack.constant(mm), FIVE);
    }

    private static Outcome within(double mm, double tolerance) {
        return new Outcome(mm, mm, stack(mm, tolerance), FIVE);
    }

    private static Stack stack(double mm, double tolerance) {
        return Stack.of(new Reading("gap", mm, tolerance, tolerance, Origin.MEASURED, true, Kind.LENGTH, ""));
    }
}
