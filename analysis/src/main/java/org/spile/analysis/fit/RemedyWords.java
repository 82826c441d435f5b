package org.spile.analysis.fit;

import java.util.List;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Remedy;
import org.spile.geometry.kernel.measure.Written;

/** Says a remedy: what to change, to what, and what would do as drawn. */
final class RemedyWords {
    private RemedyWords() {}

    static Remedy offered(Lever lever, FitRemedies.Change change) {
        String set = lever.reading().path() + "=" + Written.number(change.value(), 1);
        return new Remedy(says(lever, change) + asDrawn(lever, change), List.of(set));
    }

    /** A lowered ceiling that spoils something else: said, so that nobody tries it, but not as an edit. */
    static Remedy spoils(Lever lever, FitRemedies.Change change, Finding spoilt) {
        String says = "not possible: to " + says(lever, change) + asDrawn(lever, change) + " would do, but then "
                + spoilt.because();
        return new Remedy(says, List.of());
    }

    /** A ceiling that meets something before it is low enough. */
    static Remedy stopped(Lever lever, Descent.Stop met) {
        String path = lever.reading().path();
        String says = "not possible: lowering the " + surface(path) + " of " + thing(path) + " by "
                + Mm.text(met.neededMm()) + " would do, but from " + Mm.text(met.fromMm()) + " on it is too near to "
                + met.title() + ", " + Mm.text(met.neededMm() - met.fromMm()) + " too early";
        return new Remedy(says, List.of());
    }

    private static String says(Lever lever, FitRemedies.Change change) {
        String path = lever.reading().path();
        double now = lever.reading().value();
        String to = Written.number(change.value(), 1) + " mm";
        String from = Written.number(now, 2) + " mm";
        return switch (lever.kind()) {
            case DROP ->
                "lower the " + surface(path) + " of " + thing(path) + " by " + Written.number(change.value() - now, 1)
                        + " mm" + (now == 0 ? "" : ", to a drop of " + to);
            case PLACE -> "set " + placed(path) + " at " + last(path) + " " + to + " instead of " + from;
            case THICKNESS ->
                "make the " + last(path) + " of " + owner(path) + " " + to + " thick at most, instead of " + from;
            case SECTION -> "make " + owner(path) + " " + to + " " + last(path) + " at most, instead of " + from;
        };
    }

    private static String asDrawn(Lever lever, FitRemedies.Change change) {
        double now = lever.reading().value();
        if (change.asDrawn() == now || change.asDrawn() == change.value()) {
            return "";
        }
        double drawn = lever.kind() == Lever.Chooses.DROP ? change.asDrawn() - now : change.asDrawn();
        return " (" + Written.number(drawn, 1) + " mm would do as drawn)";
    }

    /** {@code cavities.lobby-top.ceiling.drop}: its surface. */
    private static String surface(String path) {
        String[] keys = path.split("\\.", -1);
        return keys.length > 2 ? keys[keys.length - 2] : "ceiling";
    }

    private static String thing(String path) {
        String[] keys = path.split("\\.", -1);
        return keys.length > 1 ? keys[1] : path;
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** {@code cavities.lobby-top.top.linings[1].pir}: "lobby-top.top"; {@code runs.supply.path[3].high}: "supply.path[3]". */
    private static String owner(String path) {
        String inner = path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
        return inner.replaceAll("\\.(linings|layers)\\[\\d+]$", "");
    }

    private static String placed(String path) {
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf(".at."));
    }
}
