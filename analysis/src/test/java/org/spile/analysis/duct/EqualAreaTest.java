package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EqualAreaTest {
    /** A circle's area: pi d^2 / 4. */
    @ParameterizedTest
    @CsvSource({"7853.98163397, 100", "12271.8463031, 125", "7500, 97.7205"})
    void round(double areaMm2, double diameterMm) {
        assertEquals(diameterMm, EqualArea.roundMm(areaMm2), 1e-4);
    }
}
