package org.spile.geometry.kernel.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/**
 * The refusals of one question, worded.
 *
 * @param kind the kind of quantity asked for
 * @param words the words found
 */
record Faults(Kind kind, String words) {

    <T> Parse<T> of(Reason reason, String says) {
        return of(reason, says, kind.form(), "");
    }

    <T> Parse<T> of(Reason reason, String says, String expected) {
        return of(reason, says, expected, "");
    }

    <T> Parse<T> of(Reason reason, String says, String expected, String nearest) {
        return new Parse.Refused<>(new Refusal(reason, words, "\"" + shown(words) + "\"" + says, expected, nearest));
    }

    <T> Parse<T> empty() {
        return new Parse.Refused<>(new Refusal(Reason.EMPTY, words, "Nothing is written here.", kind.form(), ""));
    }

    <T> Parse<T> noUnit(String digits) {
        return of(Reason.NO_UNIT, " has no unit.", kind.form(digits));
    }

    <T> Parse<T> wrongUnit(Unit found) {
        String says = found.kind() == kind
                ? " has no number."
                : ": " + found.symbol() + " makes it " + found.kind().phrase() + ".";
        return of(Reason.WRONG_UNIT, says);
    }

    <T> Parse<T> unknownUnit(String found) {
        var names = new ArrayList<String>();
        for (Unit unit : kind.units()) {
            names.addAll(unit.spellings());
        }
        for (Origin origin : Origin.values()) {
            names.add(origin.word());
        }
        Optional<String> nearest = NearestName.of(found, names);
        String says = ": \"" + shown(found) + "\" is no unit of " + kind.phrase() + ".";
        return of(Reason.UNKNOWN_UNIT, says, kind.form(), nearest.orElse(""));
    }

    <T> Parse<T> surplus(String found) {
        List<String> names = List.of("measured", "assumed", "maker", "out");
        String nearest = NearestName.of(found, names).orElse("");
        String says = ": \"" + shown(found) + "\" does not belong here.";
        return of(Reason.SURPLUS, says, "Behind a value come a tolerance, then measured, assumed or maker.", nearest);
    }

    /** Long or unprintable words cut to what fits a line. */
    static String shown(String words) {
        var text = new StringBuilder();
        for (int i = 0; i < words.length() && i < 60; i++) {
            char c = words.charAt(i);
            text.append(Character.isISOControl(c) ? '\ufffd' : c);
        }
        return words.length() > 60 ? text + "..." : text.toString();
    }
}
