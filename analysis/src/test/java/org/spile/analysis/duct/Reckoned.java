package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;

/** Shorthand for tests: what was reckoned, and the air and ducts that the check values were worked out for. */
final class Reckoned {
    /** Dry air of 20 degC at 101 325 Pa. */
    static final Air AIR = new Air(1.204, 1.8134e-5);

    private Reckoned() {}

    static <T> T known(Reckoning<T> reckoning) {
        return reckoning.result().orElseThrow(() -> new AssertionError(reckoning.toString()));
    }

    static void within(double expected, double found, double share) {
        assertEquals(expected, found, Math.abs(expected) * share);
    }

    /** There is no answer, and the reason holds these words. */
    static void refused(Reckoning<?> reckoning, String... words) {
        assertTrue(reckoning.result().isEmpty(), reckoning.toString());
        for (String word : words) {
            assertTrue(reckoning.because().orElseThrow().contains(word), reckoning + " lacks " + word);
        }
    }

    static StraightDuct duct(Section section, double roughMm) {
        return known(StraightDuct.of(section, roughMm, AIR));
    }

    static StraightDuct rectangle(double wideMm, double highMm) {
        return duct(new Section.Rectangular(wideMm, highMm), 0.09);
    }

    static StraightDuct round(double diameterMm) {
        return duct(new Section.Round(diameterMm), 0.09);
    }
}
