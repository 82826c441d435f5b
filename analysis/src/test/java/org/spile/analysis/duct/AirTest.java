package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {
    /** Worked out apart, with python3-fluids 1.0.22's atmosphere. */
    @ParameterizedTest
    @CsvSource({
        "-10, 0, 0, 1.2421e-5",
        "20, 0, 0, 1.5060e-5",
        "20, 0.5, 500, 1.6060e-5",
        "20, 0.5, 1500, 1.8142e-5",
        "5, 0.8, 2000, 1.7542e-5"
    })
    void air_kinematicViscosity(double degC, double humidity, double altitudeM, double m2s) {
        within(m2s, known(Air.at(degC + 273.15, humidity, altitudeM)).kinematicM2S(), 1e-4);
    }

    @Test
    void usual_isTwentyDegreesHalfMoist() {
        Air usual = known(Air.usual(0));
        within(1.1989, usual.densityKgM3(), 6e-5);
        within(1.8134e-5, usual.viscosityPaS(), 1e-5);
        within(0.9996, known(Air.usual(1500)).densityKgM3(), 6e-5);
    }

    @Test
    void air_whatItIsMadeOfRefuses_refused() {
        refused(Air.usual(20_000), "20000 m");
        refused(Air.at(330, 0.5, 0), "330 K");
        refused(Air.at(293, 2, 0), "humidity");
    }

    @Test
    void air_nothing_isTheCallersFault() {
        assertThrows(IllegalArgumentException.class, () -> new Air(0, 1.8e-5));
        assertThrows(IllegalArgumentException.class, () -> new Air(1.2, -1));
        assertThrows(IllegalArgumentException.class, () -> new Air(Double.NaN, 1.8e-5));
        assertThrows(IllegalArgumentException.class, () -> new Air(1.2, Double.POSITIVE_INFINITY));
    }
}
