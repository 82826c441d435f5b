package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class UnitTest {
    /** The seven digits printed in NIST Special Publication 811 (2008), appendix B.8, in SI base units. */
    @Test
    void conversions_agreeWithNistSp811() {
        printed("1 in", Kind.LENGTH, 2.54e-2 * 1000);
        printed("1 ft", Kind.LENGTH, 3.048e-1 * 1000);
        printed("1 in2", Kind.AREA, 6.4516e-4 * 1e6);
        printed("1 ft2", Kind.AREA, 9.290304e-2 * 1e6);
        printed("1 lb", Kind.MASS, 4.535924e-1);
        printed("1 oz", Kind.MASS, 2.834952e-2);
        printed("1 cfm", Kind.FLOW, 4.719474e-4);
        printed("1 inH2O", Kind.PRESSURE, 2.490889e2);
        printed("1 mmH2O", Kind.PRESSURE, 9.80665);
        printed("1 mbar", Kind.PRESSURE, 1.0e2);
        printed("1 BTU/h", Kind.POWER, 2.930711e-1);
        printed("1 ft/min", Kind.SPEED, 5.08e-3);
        printed("1 mph", Kind.SPEED, 4.4704e-1);
        printed("1 km/h", Kind.SPEED, 2.777778e-1);
        printed("1 lb/ft3", Kind.DENSITY, 1.601846e1);
        printed("1 lb/h", Kind.MASS_RATE, 1.259979e-4);
        printed("1 lbf", Kind.FORCE, 4.448222);
    }

    /** Fixed points of the scales: ice point 0 degC = 32 degF = 273.15 K; -40 degC = -40 degF (from the definition). */
    @Test
    void temperatures_meetAtTheirFixedPoints() {
        assertEquals(273.15, base("0 degC", Kind.TEMPERATURE));
        assertEquals(273.15, base("32 degF", Kind.TEMPERATURE));
        assertEquals(373.15, base("212 degF", Kind.TEMPERATURE));
        assertEquals(base("-40 degC", Kind.TEMPERATURE), base("-40 degF", Kind.TEMPERATURE));
    }

    @Property
    void writtenInAnyUnit_readsBack(
            @ForAll("units") Unit unit,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll boolean toleranced) {
        // Just inside the range: the last bit of a conversion must not push a value out of it.
        double most = Math.min(unit.kind().mostBase() * 0.999, 1e9);
        double least = Math.max(unit.kind().leastBase() * 1.001, 0);
        law(unit, least + share * (most - least), toleranced ? share / 3 : 0);
    }

    private static void law(Unit unit, double anyBase, double tolerance) {
        double base = unit.kind() == Kind.COUNT ? Math.rint(anyBase) : anyBase;
        String words = Written.exactIn(unit, base);
        String behind = tolerance == 0 ? "" : " \u00b1 " + Written.exact(tolerance) + " " + unit.symbol();
        double tolerable = Math.max(Math.abs(base), 1e-9) * 1e-13;
        Parse<Reading> parse = QuantityText.inMillimetres().reading(words + behind, new Ask(unit.kind(), Sign.ANY));
        Reading reading = parse.value().orElseThrow(() -> new AssertionError(words + behind + ": " + parse));
        assertEquals(base, reading.value(), tolerable, words);
        assertEquals(
                unit.differenceToBase(tolerance), reading.plus(), Math.abs(reading.plus()) * 1e-13, words + behind);
        assertEquals(base, unit.toBase(unit.fromBase(base)), tolerable, words);
    }

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Unit.class);
    }

    @Property
    void feetAndInches_readBackToTheNearestSixteenth(@ForAll @DoubleRange(min = 0, max = 90_000) double mm) {
        String words = Written.feetAndInches(mm, 16);
        double back = QuantityText.inMillimetres()
                .reading(words, Ask.distance())
                .value()
                .orElseThrow(() -> new AssertionError(words))
                .value();
        assertTrue(Math.abs(back - mm) <= 25.4 / 32 + 1e-9, mm + " mm was written " + words);
    }

    @Test
    void spellings_areUnambiguousWithinAKind() {
        for (Unit unit : Unit.values()) {
            for (String spelling : unit.spellings()) {
                assertEquals(unit, Spelling.of(spelling, unit.kind()).orElseThrow(), spelling);
            }
        }
    }

    private static void printed(String words, Kind kind, double sevenDigits) {
        assertEquals(sevenDigits, base(words, kind), sevenDigits * 5e-7, words);
    }

    private static double base(String words, Kind kind) {
        return QuantityText.inMillimetres()
                .reading(words, Ask.of(kind))
                .value()
                .orElseThrow()
                .value();
    }
}
