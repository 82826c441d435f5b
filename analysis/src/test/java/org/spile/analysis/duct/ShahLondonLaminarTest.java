package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShahLondonLaminarTest {
    /** List of f Re on a public fluids teaching page; tolerance 0.5 %. */
    @ParameterizedTest
    @CsvSource({"1, 56.9", "0.5, 62.2", "0.25, 73.0", "0.125, 82.3", "0, 96"})
    void product_list(double shortOverLong, double product) {
        within(product, known(ShahLondonLaminar.factorTimesReynolds(shortOverLong)), 5e-3);
    }

    /** The polynomial worked out apart, in Python. */
    @ParameterizedTest
    @CsvSource({"0.125, 82.359147", "0.25, 72.936066", "0.5, 62.229300", "0.75, 57.912647", "1, 56.918400"})
    void product_workedOutApart(double shortOverLong, double product) {
        within(product, known(ShahLondonLaminar.factorTimesReynolds(shortOverLong)), 1e-7);
    }

    /** The exact series for a rectangle, as in any text on viscous flow. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1, 0.3, 0.5, 0.8, 1})
    void product_exactSeries(double s) {
        double sum = 0;
        for (int n = 1; n < 200; n += 2) {
            sum += Math.tanh(n * Math.PI / (2 * s)) / Math.pow(n, 5);
        }
        double exact = 96 / ((1 + s) * (1 + s) * (1 - 192 * s / Math.pow(Math.PI, 5) * sum));
        within(exact, known(ShahLondonLaminar.factorTimesReynolds(s)), 1e-3);
    }

    @Test
    void product_outsideRange_refused() {
        refused(ShahLondonLaminar.factorTimesReynolds(1.01), "1.01");
        refused(ShahLondonLaminar.factorTimesReynolds(-0.01), "-0.01");
    }
}
