package org.spile.exporters.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;

/**
 * A report as text for people, 80 columns wide: grouped by verdict, the worst first, and last one line that counts.
 *
 * <p>What fails is told with its stack-up and remedies, what is tight with its remedies; what isn't known is grouped by
 * what would settle it, the reason that settles most first; what passes takes one line each, the least margin first.
 */
public final class ReportText {
    private final Ink ink;

    private ReportText(Ink ink) {
        this.ink = ink;
    }

    /** A writer with this ink. */
    public static ReportText in(Ink ink) {
        return new ReportText(ink);
    }

    /**
     * Writes a report.
     *
     * @throws IOException if {@code out} does
     */
    public void write(Report report, Appendable out) throws IOException {
        out.append(ink.strong(report.title().isEmpty() ? report.house() : report.title())).append('\n');
        if (!report.options().isEmpty()) {
            out.append("with ").append(String.join(", then ", report.options())).append('\n');
        }
        for (var verdict : Verdict.values()) {
            var group = ordered(report.findings(), verdict);
            if (!group.isEmpty()) {
                var heading = verdict.word().toUpperCase(Locale.ROOT);
                out.append('\n').append(ink.heading(verdict, heading)).append('\n');
                group(verdict, group, out);
            }
        }
        out.append('\n').append(report.tally().line()).append('\n');
    }

    private void group(Verdict verdict, List<Finding> group, Appendable out) throws IOException {
        switch (verdict) {
            case FAILS, TIGHT -> {
                for (var finding : group) {
                    out.append(FindingText.full(finding, ink));
                }
            }
            case NOT_KNOWN -> {
                for (var same : byReason(group)) {
                    out.append(FindingText.unknown(same));
                }
            }
            case PASSES -> {
                for (var finding : group) {
                    out.append(FindingText.brief(finding));
                }
            }
        }
    }

    /** Those of one verdict: check by check as they came, and in each the least margin first. */
    private static List<Finding> ordered(List<Finding> findings, Verdict verdict) {
        var byCheck = new LinkedHashMap<String, List<Finding>>();
        for (var finding : findings) {
            if (finding.verdict() == verdict) {
                byCheck.computeIfAbsent(finding.check(), check -> new ArrayList<>()).add(finding);
            }
        }
        var ordered = new ArrayList<Finding>();
        for (var ofCheck : byCheck.values()) {
            ofCheck.sort(Comparator.comparingDouble(ReportText::leastMargin));
            ordered.addAll(ofCheck);
        }
        return ordered;
    }

    private static double leastMargin(Finding finding) {
        return finding.worst().or(finding::margin).map(Quantity::number).orElse(Double.POSITIVE_INFINITY);
    }

    private static List<List<Finding>> byReason(List<Finding> findings) {
        Map<String, List<Finding>> groups = new LinkedHashMap<>();
        for (var finding : findings) {
            groups.computeIfAbsent(finding.because(), reason -> new ArrayList<>()).add(finding);
        }
        var ordered = new ArrayList<>(groups.values());
        ordered.sort(Comparator.comparingInt((List<Finding> group) -> group.size()).reversed());
        return ordered;
    }
}
