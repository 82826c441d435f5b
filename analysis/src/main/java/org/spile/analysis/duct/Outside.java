package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.kernel.measure.Written;

/** Says why a formula has no answer: what was asked, and the range inside which it holds. */
final class Outside {
    private static final int DECIMALS = 4;

    private Outside() {}

    static boolean is(double number, double least, double most) {
        return !(number >= least && number <= most);
    }

    /**
     * The refusal.
     *
     * @param what as "A relative roughness"
     * @param of one thing, as "Colebrook's formula"
     */
    static <T> Reckoning<T> refused(String what, double number, double least, double most, String unit, String of) {
        String suffix = unit.isEmpty() ? "" : " " + unit;
        return Reckoning.none(what + " of " + text(number) + suffix + " is outside " + of + ", which holds from "
                + text(least) + " to " + text(most) + suffix + ".");
    }

    private static String text(double number) {
        return Double.isFinite(number) ? Written.number(number, DECIMALS) : Double.toString(number);
    }
}
