package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaturationPressureTest {
    /** Steam tables (IAPWS-95), from memory. */
    @ParameterizedTest
    @CsvSource({"0.01, 611.66", "20, 2339.3", "25, 3169.9", "40, 7384.9", "50, 12352"})
    void saturation_steamTables(double degC, double pa) {
        within(pa, known(SaturationPressure.pa(degC + 273.15)), 5e-4);
    }

    /** The formula worked out apart, in Python. */
    @ParameterizedTest
    @CsvSource({"-10, 286.516853", "0, 611.212624", "20, 2339.163230", "50, 12351.900877"})
    void saturation_workedOutApart(double degC, double pa) {
        within(pa, known(SaturationPressure.pa(degC + 273.15)), 1e-8);
    }

    @Test
    void saturation_arcticOrSauna_refused() {
        refused(SaturationPressure.pa(243.1), "243.1 K", "243.15 to 323.15 K");
        refused(SaturationPressure.pa(323.2), "323.2 K");
    }
}
