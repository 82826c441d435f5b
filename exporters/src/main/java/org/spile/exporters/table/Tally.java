package org.spile.exporters.table;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;

/**
 * How many findings there are of each verdict.
 *
 * @param byVerdict a count for every verdict, none left out
 */
public record Tally(Map<Verdict, Integer> byVerdict) {
    /** Fills in what isn't there with 0. */
    public Tally {
        var all = new EnumMap<Verdict, Integer>(Verdict.class);
        for (var verdict : Verdict.values()) {
            all.put(verdict, byVerdict.getOrDefault(verdict, 0));
        }
        byVerdict = Map.copyOf(all);
    }

    static Tally of(List<Finding> findings) {
        var counts = new EnumMap<Verdict, Integer>(Verdict.class);
        findings.forEach(finding -> counts.merge(finding.verdict(), 1, Integer::sum));
        return new Tally(counts);
    }

    /** How many have this verdict. */
    public int of(Verdict verdict) {
        return byVerdict.get(verdict);
    }

    /** One line: {@code fails 1, tight 2, not known 3, passes 41}. */
    public String line() {
        var line = new StringBuilder();
        for (var verdict : Verdict.values()) {
            line.append(line.isEmpty() ? "" : ", ").append(verdict.word()).append(' ').append(of(verdict));
        }
        return line.toString();
    }
}
