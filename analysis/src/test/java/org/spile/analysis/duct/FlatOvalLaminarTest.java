package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FlatOvalLaminarTest {
    /** Closed forms: Hagen and Poiseuille for the circle, plane Poiseuille flow for plates. */
    @Test
    void product_atItsEnds() {
        assertEquals(64, known(FlatOvalLaminar.factorTimesReynolds(1)), 1e-9);
        assertEquals(96, known(FlatOvalLaminar.factorTimesReynolds(0)), 1e-9);
    }

    /** Poisson's equation solved with scipy 1.10's sparse solver, extrapolated from three grids; the circle gave 64.000. */
    @ParameterizedTest
    @CsvSource({
        "0.9, 64.0472",
        "0.8, 64.3060",
        "0.7, 64.9452",
        "0.6, 66.1467",
        "0.5, 68.1089",
        "0.4, 71.0369",
        "0.3, 75.1216",
        "0.25, 77.6485",
        "0.2, 80.5233",
        "0.15, 83.7670",
        "0.125, 85.5349",
        "0.1, 87.4053",
        "0.05, 91.4700"
    })
    void product_poisson(double shortOverLong, double product) {
        within(product, known(FlatOvalLaminar.factorTimesReynolds(shortOverLong)), 3e-4);
    }

    /** The same equation solved again here, on a coarse grid whose steps are cut where they meet the wall. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.5, 0.25})
    void product_solvedAgain(double shortOverLong) {
        within(
                new Stadium(1 / shortOverLong - 1).product(),
                known(FlatOvalLaminar.factorTimesReynolds(shortOverLong)),
                3e-3);
    }

    @Test
    void product_outsideRange_refused() {
        refused(FlatOvalLaminar.factorTimesReynolds(1.01), "1.01");
        refused(FlatOvalLaminar.factorTimesReynolds(-0.01), "-0.01");
    }

    /** A quarter of an oval 2 high with flats 2 x {@code flat} long: nothing at the wall, -1 for the speed's curvature. */
    private record Stadium(double flat) {
        private static final int ROWS = 20;
        private static final double STEP = 1.0 / ROWS;
        private static final int SWEEPS = 4000;

        double product() {
            int columns = (int) Math.round((flat + 1) / STEP);
            double[][] speed = new double[columns + 2][ROWS + 2];
            for (int sweep = 0; sweep < SWEEPS; sweep++) {
                for (int i = 0; i <= columns; i++) {
                    for (int j = 0; j <= ROWS; j++) {
                        relax(speed, i, j);
                    }
                }
            }
            double mean = sum(speed, columns) / (flat + Math.PI / 4);
            double hydraulic = 4 * (flat + Math.PI / 4) / (flat + Math.PI / 2);
            return 2 * hydraulic * hydraulic / mean;
        }

        private void relax(double[][] speed, int i, int j) {
            double toRight = Math.min(STEP, wideAt(j * STEP) - i * STEP);
            double toTop = Math.min(STEP, highAt(i * STEP) - j * STEP);
            if (toRight < 1e-9 || toTop < 1e-9) {
                return;
            }
            double right = toRight < STEP ? 0 : speed[i + 1][j];
            double top = toTop < STEP ? 0 : speed[i][j + 1];
            double left = speed[Math.abs(i - 1)][j];
            double below = speed[i][Math.abs(j - 1)];
            double across = 2 / (toRight + STEP) * (right / toRight + left / STEP);
            double up = 2 / (toTop + STEP) * (top / toTop + below / STEP);
            double middle = 2 / (toRight * STEP) + 2 / (toTop * STEP);
            speed[i][j] += 1.7 * ((1 + across + up) / middle - speed[i][j]);
        }

        private double sum(double[][] speed, int columns) {
            double sum = 0;
            for (int i = 0; i <= columns; i++) {
                double column = -speed[i][0] / 2;
                for (int j = 0; j <= ROWS; j++) {
                    column += speed[i][j];
                }
                sum += (i == 0 ? 0.5 : 1) * column * STEP * STEP;
            }
            return sum;
        }

        private double wideAt(double y) {
            return flat + Math.sqrt(Math.max(0, 1 - y * y));
        }

        private double highAt(double x) {
            return x <= flat ? 1 : Math.sqrt(Math.max(0, 1 - (x - flat) * (x - flat)));
        }
    }
}
