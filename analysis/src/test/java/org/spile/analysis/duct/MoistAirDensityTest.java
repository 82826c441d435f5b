package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirDensityTest {
    /** The ideal mixture worked out with python3-fluids 1.0.22's atmosphere; the last column CIPM-2007, from memory. */
    @ParameterizedTest
    @CsvSource({
        "-10, 0, 101325, 1.3414, 1.3424",
        "0, 0, 101325, 1.2923, 1.2930",
        "10, 0.5, 101325, 1.2438, 1.2444",
        "20, 0, 101325, 1.2041, 1.2046",
        "20, 0.5, 101325, 1.1989, 1.1993",
        "20, 1, 101325, 1.1936, 1.1941",
        "35, 0.5, 101325, 1.1335, 1.1338",
        "45, 0.5, 101325, 1.0896, 1.0899",
        "20, 0.5, 95461, 1.1292, 1.1296",
        "20, 0.5, 89875, 1.0628, 1.0631",
        "20, 0.5, 84556, 0.9996, 0.9999",
        "5, 0.8, 79495, 0.9923, 0.9928"
    })
    void density_table(double degC, double humidity, double pa, double ideal, double cipm) {
        double found = known(MoistAirDensity.kgM3(degC + 273.15, humidity, pa));
        within(ideal, found, 6e-5);
        within(cipm, found, 1e-3);
    }

    /** Printed table "Density of moist air" of a public construction reference page: dew point 10 degC, 760 mmHg. */
    @ParameterizedTest
    @CsvSource({"10, 1.241", "20, 1.199", "40, 1.122"})
    void density_printedTable(double degC, double kgM3) {
        double vapour = known(SaturationPressure.pa(283.15)) / known(SaturationPressure.pa(degC + 273.15));
        within(kgM3, known(MoistAirDensity.kgM3(degC + 273.15, vapour, 101_325)), 1e-3);
    }

    @Test
    void density_beyondWhatAirHolds_refused() {
        refused(MoistAirDensity.kgM3(293.15, 1.01, 101_325), "humidity", "1.01");
        refused(MoistAirDensity.kgM3(293.15, -0.01, 101_325), "-0.01");
        refused(MoistAirDensity.kgM3(293.15, 1, 2000), "2000");
        refused(MoistAirDensity.kgM3(400, 0.5, 101_325), "400 K");
    }
}
