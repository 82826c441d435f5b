package org.spile.geometry.kernel.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text, the one writer for every format.
 *
 * <p>A decimal point, no grouping, no exponent, no {@code -0}, trailing zeros cut; the same on every machine and in
 * every language. Numbers are first rounded to 13 significant digits, which drops the noise of binary arithmetic (0.15
 * is meant, not 0.1499999999999999944), then half up to the asked decimals.
 */
public final class Written {
    private static final MathContext NOISE = new MathContext(13, RoundingMode.HALF_EVEN);
    private static final BigDecimal INCH_MM = new BigDecimal("25.4");
    private static final int MOST_DECIMALS = 12;
    private static final int MOST_DIGITS = 17;

    private Written() {}

    /**
     * A number with up to so many decimals.
     *
     * @throws IllegalArgumentException if it is not finite or the decimals are not 0 to 12
     */
    public static String number(double number, int decimals) {
        return plain(rounded(number, decimals, RoundingMode.HALF_UP));
    }

    /** As {@link #number}, but never below the number: for what must be at least so much. */
    public static String up(double number, int decimals) {
        return plain(rounded(number, decimals, RoundingMode.CEILING));
    }

    /** As {@link #number}, but never above the number: for what may be at most so much. */
    public static String down(double number, int decimals) {
        return plain(rounded(number, decimals, RoundingMode.FLOOR));
    }

    /**
     * The shortest decimal that reads back as the very same double.
     *
     * @throws IllegalArgumentException if it is not finite
     */
    public static String exact(double number) {
        BigDecimal whole = new BigDecimal(finite(number));
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal shorter = whole.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (shorter.doubleValue() == number) {
                return plain(shorter);
            }
        }
        return plain(whole.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)));
    }

    /**
     * A value in a unit, {@code 25 L/s}: with up to so many decimals of that unit.
     *
     * @param base the value in the base unit of the unit's kind
     */
    public static String in(Unit unit, double base, int decimals) {
        return joined(number(unit.fromBase(base), decimals), unit);
    }

    /** A value in a unit with every digit that counts, {@code 15.875 mm}. */
    public static String exactIn(Unit unit, double base) {
        return joined(cut(unit.fromBase(base)), unit);
    }

    /**
     * A reading as it would be typed: value in its base unit, tolerance and origin.
     *
     * <p>Lengths are written without a unit, as in a file in millimetres; kinds that must carry a unit carry it.
     */
    public static String reading(Reading reading) {
        String symbol =
                reading.kind() == Kind.LENGTH || reading.kind().baseSymbol().isEmpty()
                        ? ""
                        : " " + reading.kind().baseSymbol();
        var text = new StringBuilder(cut(reading.value())).append(symbol);
        if (reading.plus() != 0 || reading.minus() != 0) {
            if (reading.plus() == reading.minus()) {
                text.append(" ± ").append(cut(reading.plus())).append(symbol);
            } else {
                text.append(" +").append(cut(reading.plus())).append(symbol);
                text.append("/-").append(cut(reading.minus())).append(symbol);
            }
        }
        String word = reading.origin().word();
        return word.isEmpty() ? text.toString() : text.append(' ').append(word).toString();
    }

    /**
     * A length in feet, inches and a fraction, {@code 14' 2 1/2"}, to the nearest fraction.
     *
     * @param mm the length, which may be negative
     * @param denominator the finest fraction of an inch: 1, 2, 4, 8, 16, 32 or 64
     * @throws IllegalArgumentException if the length is not finite or the denominator is none of these
     */
    public static String feetAndInches(double mm, int denominator) {
        long parts = parts(mm, denominator);
        long feet = parts / (12L * denominator);
        long rest = parts % (12L * denominator);
        String sign = mm < 0 && parts > 0 ? "-" : "";
        if (feet == 0) {
            return sign + inchText(rest, denominator) + "\"";
        }
        return sign + feet + "'" + (rest == 0 ? "" : " " + inchText(rest, denominator) + "\"");
    }

    /**
     * A length in inches and a fraction, {@code 50 1/2"}, to the nearest fraction.
     *
     * @throws IllegalArgumentException as {@link #feetAndInches}
     */
    public static String inches(double mm, int denominator) {
        long parts = parts(mm, denominator);
        return (mm < 0 && parts > 0 ? "-" : "") + inchText(parts, denominator) + "\"";
    }

    private static long parts(double mm, int denominator) {
        if (denominator < 1 || denominator > 64 || Integer.bitCount(denominator) != 1) {
            throw new IllegalArgumentException("a fraction of an inch is 1, 2, 4 ... 64 parts: " + denominator);
        }
        return new BigDecimal(finite(mm))
                .abs()
                .round(NOISE)
                .multiply(BigDecimal.valueOf(denominator))
                .divide(INCH_MM, 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static String inchText(long parts, int denominator) {
        long whole = parts / denominator;
        long top = parts % denominator;
        if (top == 0) {
            return Long.toString(whole);
        }
        long bottom = denominator;
        while (top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        return (whole == 0 ? "" : whole + " ") + top + "/" + bottom;
    }

    private static BigDecimal rounded(double number, int decimals, RoundingMode mode) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals must be 0 to " + MOST_DECIMALS + ": " + decimals);
        }
        return new BigDecimal(finite(number)).round(NOISE).setScale(decimals, mode);
    }

    // Conversions leave the last bit uncertain; 15 digits are what a double surely holds.
    private static String cut(double number) {
        return plain(new BigDecimal(finite(number)).round(new MathContext(15, RoundingMode.HALF_EVEN)));
    }

    private static String joined(String number, Unit unit) {
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static double finite(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("only a finite number can be written: " + number);
        }
        return number;
    }
}
