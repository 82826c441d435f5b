package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WrittenTest {
    @Test
    void number_worked() {
        assertEquals("0", Written.number(-0.0, 3));
        assertEquals("0", Written.number(-0.0004, 3));
        assertEquals("-0.001", Written.number(-0.0005, 3));
        assertEquals("16.5", Written.number(16.5, 3));
        assertEquals("100", Written.number(100, 0));
        assertEquals("0.2", Written.number(0.15, 1));
        assertEquals("0.3", Written.number(0.1 + 0.2, 9));
        assertEquals("100000000000000", Written.number(1e14, 2));
        assertEquals("0.00001", Written.number(1e-5, 6));
        assertThrows(IllegalArgumentException.class, () -> Written.number(Double.NaN, 2));
        assertThrows(IllegalArgumentException.class, () -> Written.number(1, 13));
    }

    @Test
    void upAndDown_keepToTheSafeSide() {
        assertEquals("16.5", Written.up(16.5, 1));
        assertEquals("16.6", Written.up(16.5001, 1));
        assertEquals("16.5", Written.up(16.499999999999996, 1));
        assertEquals("-16.5", Written.up(-16.5001, 1));
        assertEquals("16.5", Written.down(16.5999, 1));
        assertEquals("6.6", Written.down(6.6000000000000005, 1));
    }

    @Test
    void exact_isTheShortestThatReadsBack() {
        assertEquals("0.1", Written.exact(0.1));
        assertEquals("0.30000000000000004", Written.exact(0.1 + 0.2));
        assertEquals("208", Written.exact(208));
        assertEquals("0", Written.exact(-0.0));
        assertEquals("0.002", Written.exact(2.0E-3));
    }

    @Test
    void feetAndInches_worked() {
        assertEquals("14' 2 1/2\"", Written.feetAndInches(4330.7, 16));
        assertEquals("6'", Written.feetAndInches(1828.8, 16));
        assertEquals("6'", Written.feetAndInches(1828.7, 16));
        assertEquals("5/8\"", Written.feetAndInches(15.875, 64));
        assertEquals("0\"", Written.feetAndInches(0, 16));
        assertEquals("0\"", Written.feetAndInches(-0.1, 16));
        assertEquals("-1' 6\"", Written.feetAndInches(-457.2, 16));
        assertEquals("50 1/2\"", Written.inches(50.5 * 25.4, 8));
        assertThrows(IllegalArgumentException.class, () -> Written.inches(1, 10));
    }

    @Test
    void readings_asTheyWouldBeTyped() {
        assertEquals("208", Written.reading(Reading.of("", Kind.LENGTH, 208)));
        assertEquals("25 L/s", Written.in(Unit.LITRE_PER_SECOND, 0.025, 1));
        assertEquals("12 degC", Written.in(Unit.CELSIUS, 285.15, 1));
        assertEquals("70 %", Written.in(Unit.PERCENT, 0.7, 1));
        assertEquals("16.5 mm", Written.in(Unit.MILLIMETRE, 16.5, 1));
        assertEquals("15.875 mm", Written.exactIn(Unit.MILLIMETRE, 15.875));
        assertEquals(
                "208 +0/-2 maker", Written.reading(new Reading("", 208, 0, 2, Origin.MAKER, true, Kind.LENGTH, "")));
        assertEquals(
                "45 kg \u00b1 1 kg assumed",
                Written.reading(new Reading("", 45, 1, 1, Origin.ASSUMED, true, Kind.MASS, "")));
    }

    /** The oracle is the Java library's DecimalFormat, on decimals short enough that it sees no binary noise. */
    @Property
    void number_agreesWithDecimalFormat(
            @ForAll @IntRange(min = -2_000_000_000, max = 2_000_000_000) int digits,
            @ForAll @IntRange(min = 0, max = 6) int scale,
            @ForAll @IntRange(min = 0, max = 6) int decimals) {
        law(digits, scale, decimals);
    }

    private static void law(int digits, int scale, int decimals) {
        var number = new java.math.BigDecimal(digits).movePointLeft(scale);
        var format = new DecimalFormat("0." + "#".repeat(decimals), DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setRoundingMode(RoundingMode.HALF_UP);
        String expected = format.format(number).replaceFirst("\\.$", "");
        assertEquals(expected.equals("-0") ? "0" : expected, Written.number(number.doubleValue(), decimals));
    }

    @Property
    void exact_readsBack(@ForAll double number) {
        assertEquals(number + 0.0, Double.parseDouble(Written.exact(number)));
    }
}
