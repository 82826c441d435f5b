package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.whole.TapeRow;
import org.spile.analysis.whole.TapeSheet;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Table;
import org.spile.geometry.kernel.measure.Written;

/** The tape-measure sheet: pictures with numbered tapes, and a table with room to write. */
public final class TapeSheets {
    /** Room for handwriting (mm). */
    private static final double ROW_MM = 8;

    private static final List<Table.Column> COLUMNS = List.of(
            new Table.Column("no", 7),
            new Table.Column("hold the tape between; path in the file", 81),
            new Table.Column("in the file", 27),
            new Table.Column("measured", 22),
            new Table.Column("±", 9),
            new Table.Column("needed", 15),
            new Table.Column("decides", 18));

    private static final String CAUTION =
            "Sections across look forward. Electric, gas, refrigerant and structural work: local codes and licensed trades"
                    + " decide.";

    private TapeSheets() {}

    /**
     * Lays the sheet out.
     *
     * @param subject the house
     * @param sheet with one row at least
     */
    public static Laid of(Subject subject, TapeSheet sheet) {
        Laid laid = layout(subject, sheet, PaperSize.A4).lay();
        // A page to carry: larger paper only where no useful scale brings it on A4.
        return laid instanceof Laid.Fits
                ? laid
                : layout(subject, sheet, PaperSize.A3).lay();
    }

    private static SheetLayout layout(Subject subject, TapeSheet sheet, PaperSize paper) {
        SheetLayout layout = SheetLayout.named("measure", subject.block("What to measure", "tape-measure sheet"))
                .on(paper)
                .figure(table(sheet))
                .panel(decided(sheet))
                .withoutLegend();
        TapePlaces.of(subject.house(), sheet.rows())
                .forEach(place -> layout.view(new TapeView(subject.house(), place).draft()));
        return layout;
    }

    private static Table table(TapeSheet sheet) {
        List<Table.Row> rows = new ArrayList<>();
        for (TapeSheet.Stop stop : sheet.stops()) {
            rows.add(Table.Row.heading(stop.title()));
            stop.rows().forEach(row -> rows.add(row(sheet, stop, row)));
        }
        return new Table(COLUMNS, rows, ROW_MM);
    }

    private static Table.Row row(TapeSheet sheet, TapeSheet.Stop stop, TapeRow row) {
        return new Table.Row(List.of(
                List.of(Integer.toString(row.number())),
                List.of(says(stop, row), row.path()),
                List.of(row.inFile()),
                List.of(),
                List.of(),
                List.of(row.neededSays()),
                List.of(sheet.letters(row))));
    }

    /** What to hold the tape between; where one stands needn't be said again. */
    private static String says(TapeSheet.Stop stop, TapeRow row) {
        String here = stop.title().replaceFirst(",.*", "") + ": ";
        return row.says().startsWith(here) ? row.says().substring(here.length()) : row.says();
    }

    private static Panel decided(TapeSheet sheet) {
        List<Panel.Item> items = new ArrayList<>();
        for (Finding finding : sheet.decided()) {
            items.add(new Panel.Item(sheet.letter(finding), says(finding)));
        }
        String left =
                sheet.left() == 0 ? "" : sheet.left() + " more could turn and will come up when these are settled. ";
        items.add(new Panel.Item("", left + String.join(" ", TapeSheet.NOTES) + " " + CAUTION));
        return new Panel("They decide", items);
    }

    private static String says(Finding finding) {
        String against = finding.against().map(other -> " to " + other).orElse("");
        String margin = Written.number(finding.margin().orElseThrow().number(), 1);
        return finding.verdict().word() + ", margin " + margin + ": " + finding.check() + ", " + finding.subject()
                + against;
    }
}
