package org.spile.exporters.table;

import java.io.IOException;
import org.spile.analysis.finding.Quantity;
import org.spile.geometry.kernel.measure.Written;

/** A sum as text for people, 80 columns wide. */
public final class SumText {
    private static final int LABEL = 28;
    private static final String INDENT = "  ";

    private final Ink ink;

    private SumText(Ink ink) {
        this.ink = ink;
    }

    /** A writer with this ink. */
    public static SumText in(Ink ink) {
        return new SumText(ink);
    }

    /**
     * Writes a sum.
     *
     * @throws IOException if {@code out} does
     */
    public void write(Sum sum, Appendable out) throws IOException {
        out.append(ink.strong(sum.title())).append('\n');
        for (var group : sum.groups()) {
            out.append('\n').append(Paragraph.of("", "", group.title()));
            for (var line : group.lines()) {
                out.append(line(line));
            }
        }
        if (!sum.cautions().isEmpty()) {
            out.append('\n');
        }
        for (var caution : sum.cautions()) {
            out.append(Paragraph.of("", INDENT, caution));
        }
    }

    private static String line(Sum.Line line) {
        var first = Paragraph.left(INDENT + line.label(), LABEL);
        var words = words(line.found()) + (line.note().isEmpty() ? "" : "; " + line.note());
        return Paragraph.of(first, " ".repeat(LABEL), words);
    }

    private static String words(Sum.Found found) {
        if (found instanceof Sum.Found.One one) {
            return text(one.quantity(), one.decimals());
        }
        if (found instanceof Sum.Found.Between between) {
            return text(between.value(), between.decimals()) + ", from "
                    + Written.number(between.low().number(), between.decimals()) + " to "
                    + text(between.high(), between.decimals());
        }
        return found instanceof Sum.Found.Said said ? said.words() : "not known: " + ((Sum.Found.Open) found).because();
    }

    private static String text(Quantity quantity, int decimals) {
        var number = Written.number(quantity.number(), decimals);
        return quantity.unit().isEmpty() ? number : number + " " + quantity.unit();
    }
}
