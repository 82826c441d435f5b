package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JonesFactorTest {
    /** The formula worked out apart, in Python. */
    @ParameterizedTest
    @CsvSource({"1, 1.125", "0.5, 1.010416667", "0.125, 0.774088542", "0.458015267, 0.990365752"})
    void factor_workedOutApart(double shortOverLong, double factor) {
        within(factor, known(JonesFactor.of(shortOverLong)), 1e-8);
    }

    /** 64 / phi* against the laminar f Re that a public fluids teaching page lists: 56.9, 62.2, 73.0, 82.3; within 2 %. */
    @ParameterizedTest
    @CsvSource({"1, 56.9", "0.5, 62.2", "0.25, 73.0", "0.125, 82.3"})
    void factor_recoversLaminarFlow(double shortOverLong, double factorTimesReynolds) {
        within(factorTimesReynolds, 64 / known(JonesFactor.of(shortOverLong)), 0.02);
    }

    @Test
    void factor_outsideRange_refused() {
        refused(JonesFactor.of(1.1), "1.1");
        refused(JonesFactor.of(0), "rectangle");
    }
}
