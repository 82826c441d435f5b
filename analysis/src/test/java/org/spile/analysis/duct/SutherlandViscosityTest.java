package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SutherlandViscosityTest {
    /** python3-fluids 1.0.22, ATMOSPHERE_1976 at 0, 500, 1000, 1500 and 2000 m, micropascal seconds. */
    @ParameterizedTest
    @CsvSource({"288.15, 17.894", "284.90, 17.737", "281.65, 17.579", "278.40, 17.420", "275.15, 17.260"})
    void viscosity_fluids(double tempK, double microPaS) {
        within(microPaS, known(SutherlandViscosity.paS(tempK)) * 1e6, 5e-5);
    }

    /** The formula worked out apart, in Python. */
    @ParameterizedTest
    @CsvSource({"200, 1.328558875e-5", "293.15, 1.813405882e-5", "400, 2.285266458e-5"})
    void viscosity_workedOutApart(double tempK, double paS) {
        within(paS, known(SutherlandViscosity.paS(tempK)), 1e-9);
    }

    @Test
    void viscosity_outsideRange_refused() {
        refused(SutherlandViscosity.paS(199.9), "199.9 K");
        refused(SutherlandViscosity.paS(400.1), "200 to 400 K");
    }
}
