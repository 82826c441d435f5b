package org.spile.analysis.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.kernel.measure.Layer;
import org.spile.geometry.kernel.measure.Likely;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * A length that was found, held against one that is asked for.
 *
 * <p>The geometry says how long it is, as certified bounds; the stack says how far its readings may be off. To first order
 * these don't depend on each other, so the worst case is the lower bound less the stack's whole way down. A margin met
 * with equality is met.
 *
 * @param lowMm it is at least this long as drawn
 * @param highMm and at most this long
 * @param stack the readings it rests on; only its tolerances count here
 * @param demand what is asked for
 */
record Outcome(double lowMm, double highMm, Stack stack, Demand demand) {
    private static final double SHARP = 1e6;

    /** A length that is exactly the sum of its readings. */
    static Outcome of(Stack stack, Demand demand) {
        return new Outcome(stack.valueMm(), stack.valueMm(), stack, demand);
    }

    /** How much the tolerances of its readings may take away. */
    double downMm() {
        return stack.valueMm() - stack.worstLow();
    }

    /** Found less asked, as drawn. */
    double marginMm() {
        return lowMm - demand.mm();
    }

    /** Found less asked, with everything against it. */
    double worstMm() {
        return lowMm - downMm() - demand.worstMm();
    }

    /** Found less asked, as it is likely; decides nothing. */
    OptionalDouble likelyMm() {
        Optional<Likely> likely = Likely.of(stack);
        return likely.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(lowMm - stack.valueMm() + likely.get().lowMm() - demand.worstMm());
    }

    Verdict verdict() {
        if (highMm - demand.mm() < -GeometryTolerance.CONTACT_MM) {
            return Verdict.FAILS;
        }
        if (marginMm() < -GeometryTolerance.CONTACT_MM) {
            return Verdict.NOT_KNOWN;
        }
        return worstMm() < -GeometryTolerance.CONTACT_MM ? Verdict.TIGHT : Verdict.PASSES;
    }

    Quantity value() {
        return mm(lowMm);
    }

    Quantity required() {
        return mm(demand.mm());
    }

    Quantity margin() {
        return mm(marginMm());
    }

    Quantity worst() {
        return mm(worstMm());
    }

    Optional<Quantity> likely() {
        OptionalDouble likely = likelyMm();
        return likely.isEmpty() ? Optional.empty() : Optional.of(mm(likely.getAsDouble()));
    }

    /** Drops the noise of the arithmetic, far below what anybody measures. */
    private static Quantity mm(double mm) {
        return Quantity.mm(Math.rint(mm * SHARP) / SHARP);
    }

    /** Paths of the guesses it rests on, and of the defaults that stand in for a value. */
    List<String> restsOn() {
        Set<String> paths = new LinkedHashSet<>();
        for (Layer layer : stack.layers()) {
            Reading reading = layer.reading();
            // A default of nothing, as a ceiling that isn't lowered, is no guess.
            boolean standsIn = reading.origin() == Origin.DEFAULT && reading.value() != 0;
            if (reading.origin() == Origin.ASSUMED || standsIn) {
                paths.add(reading.path());
            }
        }
        demand.restsOn().ifPresent(paths::add);
        return List.copyOf(paths);
    }

    /** What came of it, as the rest of a sentence: "15 mm asked: 6 mm short". */
    String says() {
        return Mm.text(demand.mm()) + " asked: " + comesTo();
    }

    /** The same without what was asked: "6 mm short". */
    String comesTo() {
        return switch (verdict()) {
            case FAILS -> Mm.shortBy(marginMm()) + " short" + atWorst() + asLikely() + ".";
            case TIGHT ->
                "met as drawn, " + Mm.shortBy(worstMm()) + " short with every tolerance against it" + asLikely() + ".";
            case NOT_KNOWN ->
                "open, as the gap is known only to lie between " + Mm.besides(lowMm, demand.mm()) + " and "
                        + Mm.besides(highMm, demand.mm()) + ".";
            case PASSES -> "met" + atWorst() + ".";
        };
    }

    private String asLikely() {
        OptionalDouble likely = likelyMm();
        if (likely.isEmpty()) {
            return "";
        }
        double mm = likely.getAsDouble();
        return mm < -GeometryTolerance.CONTACT_MM
                ? ", likely " + Mm.shortBy(mm) + " short"
                : ", likely met by " + Mm.text(Math.max(0, mm));
    }

    private String atWorst() {
        if (Math.abs(worstMm() - marginMm()) <= GeometryTolerance.CONTACT_MM) {
            return "";
        }
        return worstMm() < -GeometryTolerance.CONTACT_MM
                ? ", " + Mm.shortBy(worstMm()) + " with every tolerance against it"
                : " with every tolerance against it, by " + Mm.text(Math.max(0, worstMm()));
    }
}
