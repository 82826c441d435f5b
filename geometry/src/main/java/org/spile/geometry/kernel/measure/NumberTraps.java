package org.spile.geometry.kernel.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/** Ways of writing numbers that are understood by people but not taken here, each with what to write instead. */
final class NumberTraps {
    private static final Pattern COMMA = Pattern.compile("(\\d*),(\\d+)");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(,\\d{3})+(?![\\d])");
    private static final Pattern EXPONENT = Pattern.compile("\\d\\.?[eE][+-]?\\d+");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?\\.?(nan|inf|infinity|\u221e)( .*)?");
    private static final Pattern TIMES = Pattern.compile("[1-9]\\d* ?[xX*] ?\\d+.*");
    private static final Pattern DASHED = Pattern.compile("(\\d+(?:\\.\\d+)?) ?- ?(\\d+(?:\\.\\d+)?)( ?\\S+)?");

    private NumberTraps() {}

    static <T> Optional<Parse<T>> met(Faults faults, String text) {
        Matcher comma = COMMA.matcher(text);
        if (comma.find()) {
            String point = comma.group(1).isEmpty() ? "0" : comma.group(1);
            String decimal = point + "." + comma.group(2);
            String advice = THOUSANDS.matcher(text).find()
                    ? "Write " + text.replace(",", "") + " for the large number, " + decimal + " for the small one."
                    : "Write " + decimal + ".";
            return Optional.of(faults.of(Reason.COMMA, ": a decimal is written with a point.", advice));
        }
        if (EXPONENT.matcher(text).find()) {
            return Optional.of(faults.of(Reason.EXPONENT, ": a number is written without an exponent."));
        }
        if (NOT_FINITE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            return Optional.of(faults.of(Reason.NOT_FINITE, " is not a number."));
        }
        if (faults.kind() == Kind.LENGTH && TIMES.matcher(text).matches()) {
            return Optional.of(faults.of(
                    Reason.SURPLUS, ": two sizes in one.", "Write each under its own key: wide, high, long."));
        }
        Matcher dashed = DASHED.matcher(text);
        if (dashed.matches()) {
            return Optional.of(faults.of(
                    Reason.SURPLUS,
                    ": two numbers with a dash.",
                    "From one to the other is " + dashed.group(1) + ".." + dashed.group(2) + "."));
        }
        return Optional.empty();
    }
}
