package org.spile.exporters.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.whole.Aim;
import org.spile.analysis.whole.ShownAnswer;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.geometry.kernel.measure.Written;

/** A study as a table for people, one line a point; what to choose among is starred. */
public final class StudyText {
    private static final String GAP = "  ";
    private static final int DECIMALS = 1;

    private final Ink ink;

    private StudyText(Ink ink) {
        this.ink = ink;
    }

    /** A writer with this ink. */
    public static StudyText in(Ink ink) {
        return new StudyText(ink);
    }

    /**
     * Writes a study.
     *
     * @throws IOException if {@code out} does
     */
    public void write(StudyReport report, Appendable out) throws IOException {
        out.append(ink.strong(report.title().isEmpty() ? report.house() : report.title()))
                .append('\n');
        if (!report.options().isEmpty()) {
            out.append(Paragraph.of("", "", "with " + String.join(", then ", report.options())));
        }
        out.append(legend(report)).append('\n').append(table(report));
        out.append('\n').append(Paragraph.of("", "", report.says()));
        for (StudyPoint point : report.study().front()) {
            out.append(GAP).append(ShellWord.settings(report.edits(point))).append('\n');
        }
    }

    /** What the columns are. */
    private static String legend(StudyReport report) {
        var text = new StringBuilder();
        Study study = report.study();
        for (int i = 0; i < study.variations().size(); i++) {
            Variation variation = study.variations().get(i);
            String unit = variation.unit().isEmpty() ? "" : " (" + variation.unit() + ")";
            String aim = variation.aim() == Aim.NONE
                    ? ""
                    : ", the " + variation.aim().word() + " that will do";
            text.append(Paragraph.of(GAP + letter(i) + GAP, "     ", variation.says() + unit + aim));
        }
        for (int i = 0; i < report.runs().size(); i++) {
            text.append(Paragraph.of(
                    GAP + round(i) + GAP,
                    "      ",
                    "round that loses as much per metre as " + report.runs().get(i) + " (mm), the more the better"));
        }
        text.append(Paragraph.of(
                GAP + "*" + GAP, "     ", "no other point that fits is better in one thing and as good in all others"));
        return text.toString();
    }

    private static String table(StudyReport report) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(head(report));
        report.study().points().forEach(point -> lines.add(line(report, point)));
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < lines.get(0).size(); column++) {
            int at = column;
            widths.add(lines.stream()
                    .filter(line ->
                            line.size() > at + 1 || line.size() == lines.get(0).size())
                    .mapToInt(line -> Paragraph.length(line.get(at)))
                    .max()
                    .orElse(0));
        }
        var text = new StringBuilder();
        for (List<String> line : lines) {
            var row = new StringBuilder();
            for (int column = 0; column < line.size(); column++) {
                boolean trouble = column == line.size() - 1 && line.size() < widths.size();
                row.append(column == 0 ? "" : GAP)
                        .append(trouble ? line.get(column) : Paragraph.right(line.get(column), widths.get(column)));
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static List<String> head(StudyReport report) {
        List<String> head = new ArrayList<>();
        head.add("");
        for (int i = 0; i < report.study().variations().size(); i++) {
            head.add(letter(i));
        }
        report.study().shown().forEach(shown -> head.addAll(List.of(shown.says(), "margin", "at worst")));
        for (int i = 0; i < report.runs().size(); i++) {
            head.add(round(i));
        }
        return head;
    }

    private static List<String> line(StudyReport report, StudyPoint point) {
        List<String> line = new ArrayList<>();
        line.add(point.front() ? "*" : " ");
        point.values().forEach(value -> line.add(Written.number(value, 3)));
        if (point.trouble().isPresent()) {
            line.add("no such house: " + point.trouble().get());
            return line;
        }
        for (ShownAnswer answer : point.answers()) {
            line.add(answer.verdict().map(verdict -> verdict.word()).orElse("-"));
            line.add(answer.margin().map(StudyText::number).orElse("-"));
            line.add(answer.worst().map(StudyText::number).orElse("-"));
        }
        for (int i = 0; i < report.runs().size(); i++) {
            String run = report.runs().get(i);
            line.add(point.carried().stream()
                    .filter(carried -> carried.run().equals(run))
                    .findFirst()
                    .flatMap(StudyPoint.Carried::roundMm)
                    .map(StudyText::spread)
                    .orElse("not known"));
        }
        return line;
    }

    private static String spread(Spread mm) {
        String value = Written.number(mm.value(), DECIMALS);
        return mm.low() == mm.high()
                ? value
                : value + " (" + Written.number(mm.low(), DECIMALS) + ".." + Written.number(mm.high(), DECIMALS) + ")";
    }

    private static String number(Quantity quantity) {
        return Written.number(quantity.number(), quantity.unit().equals("mm") ? DECIMALS : DECIMALS + 1);
    }

    private static String letter(int variation) {
        return variation == 0 ? "a" : "b";
    }

    private static String round(int run) {
        return "r" + (run + 1);
    }
}
