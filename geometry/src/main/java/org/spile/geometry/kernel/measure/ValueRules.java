package org.spile.geometry.kernel.measure;

import org.spile.geometry.kernel.measure.Parse.Understood;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/** The rules a value must keep where it is asked for: its sign and its range. */
final class ValueRules {
    private ValueRules() {}

    static Parse<Double> checked(Faults faults, Ask ask, Magnitude magnitude, Tolerance tolerance) {
        Kind kind = ask.kind();
        double value = magnitude.base().toDouble();
        if (ask.sign() != Sign.ANY && kind != Kind.TEMPERATURE && value < 0) {
            String noun = kind == Kind.LENGTH ? ask.sign() == Sign.POSITIVE ? "a size" : "a distance" : kind.phrase();
            String without = faults.words().strip().replaceFirst("^[-\u2212\u2013] ?", "");
            return faults.of(Reason.SIGN, ": " + noun + " has no sign.", "Write " + without + ".");
        }
        if (ask.sign() == Sign.POSITIVE && value == 0) {
            return faults.of(Reason.NOTHING, ": this must be more than nothing.");
        }
        if (value < kind.leastBase() || value > kind.mostBase()) {
            boolean under = value < kind.leastBase();
            double end = under ? kind.leastBase() : kind.mostBase();
            String unit = kind.baseSymbol().isEmpty() ? "" : " " + kind.baseSymbol();
            return faults.of(
                    Reason.TOO_LARGE,
                    under ? " is too little." : " is too much.",
                    "Nothing here is " + (under ? "below " : "beyond ") + Written.number(end, 6) + unit
                            + "; is the unit right?");
        }
        if (ask.sign() == Sign.POSITIVE && value - tolerance.minus() <= 0) {
            return faults.of(Reason.TOLERANCE, ": less its tolerance, nothing is left.", "Write a smaller tolerance.");
        }
        if (kind == Kind.COUNT && value != Math.rint(value)) {
            return faults.of(Reason.NO_NUMBER, " is not a whole number.");
        }
        return new Understood<>(value);
    }
}
