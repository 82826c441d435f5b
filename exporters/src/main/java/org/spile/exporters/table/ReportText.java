package org.spile.exporters.table;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;

/**
 * A report as text for people, 80 columns wide: grouped by verdict, the worst first, and last one line that counts.
 *
 * <p>What fails is told with its stack-up and remedies, what is tight with its remedies, what isn't known with what would
 * settle it; what passes takes one line each.
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
        out.append(ink.strong(report.title().isEmpty() ? report.house() : report.title()))
                .append('\n');
        if (!report.options().isEmpty()) {
            out.append(Paragraph.of("", "", "with " + String.join(", then ", report.options())));
        }
        for (var verdict : Verdict.values()) {
            var group = report.findings().all().stream()
                    .filter(finding -> finding.verdict() == verdict)
                    .toList();
            if (!group.isEmpty()) {
                var heading = verdict.word().toUpperCase(Locale.ROOT);
                out.append('\n').append(ink.heading(verdict, heading));
                write(group, new FindingText(ink, report.stances()), out);
            }
        }
        out.append('\n').append(report.findings().summary().says()).append('\n');
    }

    private static void write(List<Finding> group, FindingText text, Appendable out) throws IOException {
        switch (group.get(0).verdict()) {
            case FAILS -> {
                for (var finding : group) {
                    out.append('\n').append(text.full(finding));
                }
            }
            case TIGHT -> {
                out.append('\n');
                for (var finding : group) {
                    out.append(text.full(finding));
                }
            }
            case NOT_KNOWN -> {
                out.append('\n');
                for (var finding : group) {
                    out.append(text.open(finding));
                }
            }
            case PASSES ->
                out.append(" by so much, and so much with every tolerance against it\n")
                        .append(PassTable.of(group).lines());
        }
    }
}
