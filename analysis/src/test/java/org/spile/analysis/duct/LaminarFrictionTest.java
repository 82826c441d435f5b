package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LaminarFrictionTest {
    /** Worked out apart, to four digits. */
    @ParameterizedTest
    @CsvSource({"64, 1", "1000, 0.064", "2000, 0.032", "2300, 0.027826"})
    void factor_table(double reynolds, double factor) {
        within(factor, known(LaminarFriction.factor(reynolds)), 2e-5);
    }

    @Test
    void factor_outsideRange_refused() {
        refused(LaminarFriction.factor(2301), "2301", "2300");
        refused(LaminarFriction.factor(0), "laminar");
    }
}
