package org.spile.exporters.table;

import java.io.IOException;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.whole.TapeRow;
import org.spile.analysis.whole.TapeSheet;

/** A tape-measure sheet as text for people, 80 columns wide, with room to write. */
public final class TapeText {
    private static final String FIRST = "  ";
    private static final String REST = "      ";
    private static final int NUMBER = 4;

    private final Ink ink;

    private TapeText(Ink ink) {
        this.ink = ink;
    }

    /** A writer with this ink. */
    public static TapeText in(Ink ink) {
        return new TapeText(ink);
    }

    /**
     * Writes a sheet.
     *
     * @throws IOException if {@code out} does
     */
    public void write(TapeReport report, Appendable out) throws IOException {
        out.append(ink.strong(report.title().isEmpty() ? report.house() : report.title()))
                .append('\n');
        if (!report.options().isEmpty()) {
            out.append(Paragraph.of("", "", "with " + String.join(", then ", report.options())));
        }
        out.append(Paragraph.of("", "", report.sheet().says()));
        for (var stop : report.sheet().stops()) {
            out.append('\n').append(ink.strong(stop.title())).append('\n');
            for (var row : stop.rows()) {
                out.append(row(report, row));
            }
        }
        if (report.sheet().rows().isEmpty()) {
            return;
        }
        out.append('\n').append(ink.strong("what they decide")).append('\n');
        for (var finding : report.sheet().decided()) {
            out.append(decided(report, finding));
        }
        out.append('\n');
        for (var note : TapeSheet.NOTES) {
            out.append(Paragraph.of("", FIRST, note));
        }
    }

    private static String row(TapeReport report, TapeRow row) {
        String number = Paragraph.left(Paragraph.right(Integer.toString(row.number()), NUMBER), REST.length());
        return Paragraph.of(number, REST, row.says())
                + Paragraph.of(
                        REST,
                        REST,
                        row.inFile() + "; needed " + row.neededSays() + "; decides "
                                + report.sheet().letters(row) + (row.rank() == 1 ? "; measure this one first" : ""))
                + REST + "____________ ± _____   " + row.path() + "\n";
    }

    private static String decided(TapeReport report, Finding finding) {
        String letter = Paragraph.left(FIRST + report.sheet().letter(finding), NUMBER);
        return Paragraph.of(
                letter,
                REST,
                finding.verdict().word() + ": " + FindingText.title(finding) + ", margin "
                        + FindingText.quantity(finding.margin().orElseThrow()) + ", at worst "
                        + FindingText.quantity(finding.worst().orElseThrow()));
    }
}
