package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * One number of a house: its value, how far it may be off, where it comes from and where it was typed.
 *
 * <p>The path is the reading's identity: two readings of one path are one measurement, and err together. An empty path
 * marks a number that was typed nowhere; each such number stands for itself.
 *
 * @param path where in the file it was typed, {@code units.cooler.high}; for the two numbers of {@code 640..1380} the
 *     path with {@code [1]} and {@code [2]} behind it
 * @param value in the base unit of its kind
 * @param plus how far the true value may lie above, in the base unit, not negative
 * @param minus how far the true value may lie below, in the base unit, not negative
 * @param origin where the number comes from
 * @param toleranceTyped whether the tolerance was typed with the number; a default from a material or a trade may stand
 *     in only where it was not
 * @param kind the kind of quantity
 * @param words the number as its writer wrote it; empty if nobody wrote it
 */
public record Reading(
        String path,
        double value,
        double plus,
        double minus,
        Origin origin,
        boolean toleranceTyped,
        Kind kind,
        String words) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the value is not finite or a tolerance is negative or not finite
     */
    public Reading {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(words, "words");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value of \"" + path + "\" must be finite: " + value);
        }
        if (!(plus >= 0 && minus >= 0) || Double.isInfinite(plus) || Double.isInfinite(minus)) {
            throw new IllegalArgumentException(
                    "tolerances of \"" + path + "\" must be finite and not negative: +" + plus + "/-" + minus);
        }
        // Adding zero turns -0.0 into 0.0, so that equal numbers are equal records.
        value += 0.0;
        plus += 0.0;
        minus += 0.0;
    }

    /** An exact reading without words: for derived numbers and tests. */
    public static Reading of(String path, Kind kind, double value) {
        return new Reading(path, value, 0, 0, Origin.TYPED, false, kind, "");
    }

    /** A stated default that stands in for what was not typed. */
    public static Reading byDefault(String path, Kind kind, double value) {
        return new Reading(path, value, 0, 0, Origin.DEFAULT, false, kind, "");
    }

    /** This reading, typed at another path. */
    public Reading withPath(String otherPath) {
        return new Reading(otherPath, value, plus, minus, origin, toleranceTyped, kind, words);
    }

    /** This reading with another value, its tolerance and origin kept; the words no longer hold and are dropped. */
    public Reading withValue(double otherValue) {
        return new Reading(path, otherValue, plus, minus, origin, toleranceTyped, kind, "");
    }

    /** This reading with a tolerance that was not typed with it, such as a material's. */
    public Reading withTolerance(double otherPlus, double otherMinus) {
        return new Reading(path, value, otherPlus, otherMinus, origin, toleranceTyped, kind, words);
    }

    /** The least the true value may be, in the base unit. */
    public double low() {
        return value - minus;
    }

    /** The greatest the true value may be, in the base unit. */
    public double high() {
        return value + plus;
    }

    /** Whether the true value is taken to be exactly the value. */
    public boolean exact() {
        return plus == 0 && minus == 0;
    }
}
