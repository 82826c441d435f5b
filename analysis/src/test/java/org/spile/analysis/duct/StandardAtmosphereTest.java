package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardAtmosphereTest {
    /** python3-fluids 1.0.22, ATMOSPHERE_1976; its heights are geometric, which moves p by less than 0.01 %. */
    @ParameterizedTest
    @CsvSource({"0, 101325", "500, 95461", "1000, 89876", "1500, 84560", "2000, 79501"})
    void pressure_fluids(double altitudeM, double pressurePa) {
        within(pressurePa, known(StandardAtmosphere.pressurePa(altitudeM)), 1e-4);
    }

    /** The formula worked out apart, in Python; 11 000 m is also where ISO 2533 prints 22 632 Pa. */
    @ParameterizedTest
    @CsvSource({"-500, 107477.5114", "500, 95460.8351", "2000, 79495.2012", "11000, 22632.0389"})
    void pressure_workedOutApart(double altitudeM, double pressurePa) {
        within(pressurePa, known(StandardAtmosphere.pressurePa(altitudeM)), 1e-9);
    }

    @Test
    void pressure_stratosphereOrMine_refused() {
        refused(StandardAtmosphere.pressurePa(11_001), "11001 m", "-2000 to 11000");
        refused(StandardAtmosphere.pressurePa(-2001), "-2001 m");
        refused(StandardAtmosphere.pressurePa(Double.NaN), "NaN");
    }
}
