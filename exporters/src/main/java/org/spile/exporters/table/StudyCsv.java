package org.spile.exporters.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.whole.ShownAnswer;
import org.spile.analysis.whole.StudyPoint;
import org.spile.geometry.kernel.measure.Written;

/**
 * A study as comma-separated values (RFC 4180, but lines end in a line feed alone): one line a point, units in the first
 * line, decimal points.
 */
public final class StudyCsv {
    private static final int DECIMALS = 6;

    private StudyCsv() {}

    /**
     * Writes a study.
     *
     * @throws IOException if {@code out} does
     */
    public static void write(StudyReport report, Appendable out) throws IOException {
        line(head(report), out);
        for (StudyPoint point : report.study().points()) {
            line(cells(report, point), out);
        }
    }

    private static List<String> head(StudyReport report) {
        List<String> head = new ArrayList<>();
        report.study()
                .variations()
                .forEach(variation -> head.add(
                        variation.unit().isEmpty()
                                ? variation.says()
                                : variation.says() + " [" + variation.unit() + "]"));
        for (var shown : report.study().shown()) {
            String unit = unit(report, shown.says());
            head.add(shown.says());
            head.add(shown.says() + " margin" + unit);
            head.add(shown.says() + " at worst" + unit);
            head.add(shown.says() + " decided by");
        }
        for (String run : report.runs()) {
            head.add(run + " round [mm]");
            head.add(run + " round, least [mm]");
            head.add(run + " round, most [mm]");
        }
        head.addAll(List.of("fits", "front", "no such house"));
        return head;
    }

    /** The unit of what is shown, in brackets; none if it has no margin anywhere. */
    private static String unit(StudyReport report, String shown) {
        return report.study().points().stream()
                .flatMap(point -> point.answers().stream())
                .filter(answer -> answer.shown().says().equals(shown))
                .flatMap(answer -> answer.margin().stream())
                .map(Quantity::unit)
                .findFirst()
                .map(unit -> " [" + unit + "]")
                .orElse("");
    }

    private static List<String> cells(StudyReport report, StudyPoint point) {
        List<String> cells = new ArrayList<>();
        point.values().forEach(value -> cells.add(Written.number(value, DECIMALS)));
        for (var shown : report.study().shown()) {
            Optional<ShownAnswer> answer = point.answers().stream()
                    .filter(each -> each.shown().equals(shown))
                    .findFirst();
            cells.add(answer.flatMap(ShownAnswer::verdict).map(Verdict::word).orElse(""));
            cells.add(answer.flatMap(ShownAnswer::margin).map(StudyCsv::number).orElse(""));
            cells.add(answer.flatMap(ShownAnswer::worst).map(StudyCsv::number).orElse(""));
            cells.add(answer.flatMap(ShownAnswer::decisive).orElse(""));
        }
        for (String run : report.runs()) {
            Optional<Spread> round = point.carried().stream()
                    .filter(carried -> carried.run().equals(run))
                    .findFirst()
                    .flatMap(StudyPoint.Carried::roundMm);
            List<Function<Spread, Double>> parts = List.of(Spread::value, Spread::low, Spread::high);
            parts.forEach(part -> cells.add(
                    round.map(mm -> Written.number(part.apply(mm), DECIMALS)).orElse("")));
        }
        cells.add(point.fits() ? "yes" : "no");
        cells.add(point.front() ? "yes" : "no");
        cells.add(point.trouble().orElse(""));
        return cells;
    }

    private static String number(Quantity quantity) {
        return Written.number(quantity.number(), DECIMALS);
    }

    private static void line(List<String> cells, Appendable out) throws IOException {
        List<String> quoted = cells.stream().map(StudyCsv::quoted).toList();
        out.append(String.join(",", quoted)).append('\n');
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
