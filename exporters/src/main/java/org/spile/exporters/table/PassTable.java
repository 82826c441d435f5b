package org.spile.exporters.table;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Finding;

/** What passes, a line each: margin as drawn, margin at worst, and what it is about. */
final class PassTable {
    private static final int MARGIN = 0;
    private static final int WORST = 1;

    private final List<List<String>> rows;

    private PassTable(List<List<String>> rows) {
        this.rows = rows;
    }

    static PassTable of(List<Finding> passing) {
        var rows = new ArrayList<List<String>>();
        for (var finding : passing) {
            rows.add(List.of(
                    finding.margin().map(FindingText::quantity).orElse("-"),
                    finding.worst().map(FindingText::quantity).orElse("-"),
                    FindingText.title(finding)
                            + place(finding)
                            + (finding.margin().isPresent() ? "" : " (" + sentence(finding.because()) + ")")));
        }
        return new PassTable(rows);
    }

    /** Where along a run or a way it is least. */
    private static String place(Finding finding) {
        return finding.where()
                .map(where -> ", at " + FindingText.quantity(where.position()))
                .orElse("");
    }

    private static String sentence(String says) {
        return says.endsWith(".") ? says.substring(0, says.length() - 1) : says;
    }

    /** The lines, each with a line feed behind it. */
    String lines() {
        var text = new StringBuilder();
        for (var row : rows) {
            text.append("  ").append(Paragraph.right(row.get(MARGIN), width(MARGIN)));
            text.append("  ").append(Paragraph.right(row.get(WORST), width(WORST)));
            text.append("  ").append(row.get(WORST + 1)).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> Paragraph.length(row.get(column)))
                .max()
                .orElse(0);
    }
}
