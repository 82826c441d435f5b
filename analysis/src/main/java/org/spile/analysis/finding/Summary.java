package org.spile.analysis.finding;

import java.util.List;

/**
 * How many findings came out how.
 *
 * @param passes even with everything against them
 * @param tight as drawn only
 * @param fails not even as drawn
 * @param notKnown that a missing value or a bound leaves open
 */
public record Summary(int passes, int tight, int fails, int notKnown) {
    /** Counts. */
    public static Summary of(List<Finding> findings) {
        return new Summary(
                count(findings, Verdict.PASSES),
                count(findings, Verdict.TIGHT),
                count(findings, Verdict.FAILS),
                count(findings, Verdict.NOT_KNOWN));
    }

    /** One line, as "1 fails, 2 tight, 0 not known, 40 pass". */
    public String says() {
        return (fails == 1 ? "1 fails, " : fails + " fail, ") + tight + " tight, " + notKnown + " not known, "
                + (passes == 1 ? "1 passes" : passes + " pass");
    }

    private static int count(List<Finding> findings, Verdict verdict) {
        return (int) findings.stream()
                .filter(finding -> finding.verdict() == verdict)
                .count();
    }
}
