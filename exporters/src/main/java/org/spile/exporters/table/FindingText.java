package org.spile.exporters.table;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.kernel.measure.Written;

/** Findings in lines, those that don't pass. */
final class FindingText {
    private static final int DECIMALS = 1;
    private static final String FIRST = "  ";
    private static final String REST = "    ";
    private static final String DEEP = "      ";

    private final Ink ink;
    private final List<String> everyStance;

    FindingText(Ink ink, List<String> everyStance) {
        this.ink = ink;
        this.everyStance = everyStance;
    }

    /**
     * Title, reason, where and whose demand; then, for what fails, the stack-up and every remedy with the words to type. For what is
     * tight the best remedy will do.
     */
    String full(Finding finding) {
        boolean fails = finding.verdict() == Verdict.FAILS;
        var text = new StringBuilder(FIRST).append(ink.strong(title(finding))).append('\n');
        text.append(Paragraph.of(REST, REST, finding.because()));
        text.append(Paragraph.of(REST, REST, where(finding)));
        if (!finding.source().isEmpty()) {
            text.append(Paragraph.of(REST, DEEP, "source: " + finding.source()));
        }
        if (fails && finding.value().isPresent() && sums(finding)) {
            text.append(StackTable.of(finding.stack(), finding.value().get()).lines(DEEP));
        }
        if (finding.value().isPresent()) {
            String eaten = EatenText.of(finding.stack(), finding.value().get());
            text.append(eaten.isEmpty() ? "" : Paragraph.of(fails ? DEEP : REST, DEEP, eaten));
        }
        if (!finding.restsOn().isEmpty()) {
            text.append(Paragraph.of(REST, DEEP, "rests on assumed " + String.join(", ", finding.restsOn())));
        }
        finding.remedies().stream().limit(fails ? Long.MAX_VALUE : 1).forEach(remedy -> text.append(remedy(remedy)));
        return text.toString();
    }

    /** Whether the value is the sum of its layers: friction isn't one of sizes. */
    private static boolean sums(Finding finding) {
        String unit = finding.value().orElseThrow().unit();
        return finding.stack().stream().anyMatch(layer -> layer.size().unit().equals(unit));
    }

    /** The question, and what would settle it. */
    String open(Finding finding) {
        return FIRST + ink.strong(title(finding)) + "\n" + Paragraph.of(REST, REST, finding.because());
    }

    static String title(Finding finding) {
        var against = finding.against().map(other -> " to " + other).orElse("");
        return finding.check() + ": " + finding.subject() + against;
    }

    static String quantity(Quantity quantity) {
        var number = Written.number(quantity.number(), quantity.unit().equals("mm") ? DECIMALS : DECIMALS + 1);
        return quantity.unit().isEmpty() ? number : number + " " + quantity.unit();
    }

    private String where(Finding finding) {
        var where = new StringBuilder(stances(finding.stance()));
        if (!finding.situation().isEmpty()) {
            join(where, "while " + String.join(", ", finding.situation()));
        }
        finding.where()
                .ifPresent(at -> join(where, "at " + quantity(at.position()) + " of " + at.thing() + " " + at.piece()));
        if (finding.at().isPresent() && finding.to().isPresent()) {
            join(
                    where,
                    "from " + point(finding.at().get()) + " to "
                            + point(finding.to().get()));
        }
        return where.toString();
    }

    private String stances(List<String> stances) {
        return everyStance.size() > 1 && stances.containsAll(everyStance)
                ? "in every stance"
                : "in " + String.join(", ", stances);
    }

    private static void join(StringBuilder line, String words) {
        line.append("; ").append(words);
    }

    private static String remedy(Remedy remedy) {
        var says = Paragraph.of(REST, DEEP, "remedy: " + remedy.says());
        return remedy.set().isEmpty() ? says : says + DEEP + ShellWord.settings(remedy.set()) + "\n";
    }

    private static String point(Vector3D point) {
        return "(" + Written.number(point.getX(), DECIMALS) + ", " + Written.number(point.getY(), DECIMALS) + ", "
                + Written.number(point.getZ(), DECIMALS) + ")";
    }
}
