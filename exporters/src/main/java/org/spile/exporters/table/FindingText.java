package org.spile.exporters.table;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.kernel.measure.Written;

/** One finding in lines. */
final class FindingText {
    private static final int DECIMALS = 1;
    private static final String FIRST = "  ";
    private static final String REST = "    ";
    private static final String DEEP = "      ";

    private FindingText() {}

    /** Title, reason, numbers, places, and for what fails the stack-up; then each remedy with the words to type. */
    static String full(Finding finding, Ink ink) {
        var text = new StringBuilder();
        text.append(FIRST).append(ink.strong(title(finding))).append('\n');
        text.append(Paragraph.of(REST, REST, finding.because()));
        text.append(Paragraph.of(REST, REST, facts(finding)));
        if (finding.verdict() == Verdict.FAILS
                && finding.value().isPresent()
                && !finding.stack().isEmpty()) {
            text.append(StackTable.of(finding.stack(), finding.value().get()).lines(DEEP));
        }
        if (!finding.restsOn().isEmpty()) {
            text.append(Paragraph.of(REST, DEEP, "rests on assumed " + String.join(", ", finding.restsOn())));
        }
        for (var remedy : finding.remedies()) {
            text.append(remedy(remedy));
        }
        return text.toString();
    }

    /** The question, and what would settle it. */
    static String open(Finding finding) {
        return FIRST + title(finding) + "\n" + Paragraph.of(REST, REST, finding.because());
    }

    /** One line. */
    static String brief(Finding finding) {
        var margin = finding.margin()
                .map(quantity -> "  " + margin(quantity, finding))
                .orElse("");
        return FIRST + title(finding) + margin + "\n";
    }

    static String title(Finding finding) {
        var against = finding.against().map(other -> " to " + other).orElse("");
        return finding.check() + ": " + finding.subject() + against;
    }

    private static String facts(Finding finding) {
        var facts = new StringBuilder();
        finding.margin().ifPresent(margin -> join(facts, "margin " + margin(margin, finding)));
        if (!finding.stance().isEmpty()) {
            join(facts, "in " + String.join(", ", finding.stance()));
        }
        if (!finding.situation().isEmpty()) {
            join(facts, "while " + String.join(", ", finding.situation()));
        }
        finding.where()
                .ifPresent(where ->
                        join(facts, "at " + quantity(where.position()) + " of " + where.thing() + " " + where.piece()));
        if (finding.at().isPresent() && finding.to().isPresent()) {
            join(
                    facts,
                    "from " + point(finding.at().get()) + " to "
                            + point(finding.to().get()));
        }
        if (!finding.source().isEmpty()) {
            join(facts, "source: " + finding.source());
        }
        return facts.toString();
    }

    private static void join(StringBuilder facts, String fact) {
        facts.append(facts.isEmpty() ? "" : "; ").append(fact);
    }

    private static String margin(Quantity margin, Finding finding) {
        var worst = finding.worst()
                .map(quantity -> ", at worst " + quantity(quantity))
                .orElse("");
        return quantity(margin) + worst;
    }

    private static String remedy(Remedy remedy) {
        var says = Paragraph.of(REST, DEEP, "remedy: " + remedy.says());
        return remedy.set().isEmpty() ? says : says + DEEP + ShellWord.settings(remedy.set()) + "\n";
    }

    private static String quantity(Quantity quantity) {
        var number = Written.number(quantity.number(), DECIMALS);
        return quantity.unit().isEmpty() ? number : number + " " + quantity.unit();
    }

    private static String point(Vector3D point) {
        return "(" + Written.number(point.getX(), DECIMALS) + ", " + Written.number(point.getY(), DECIMALS) + ", "
                + Written.number(point.getZ(), DECIMALS) + ")";
    }
}
