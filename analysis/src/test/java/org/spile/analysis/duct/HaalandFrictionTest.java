package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HaalandFrictionTest {
    /** python3-fluids 1.0.22, friction.Haaland(Re, eD). */
    @ParameterizedTest
    @CsvSource({
        "4000, 0, 0.040422849329",
        "10000, 0.0009, 0.032037925677",
        "20000, 0.03, 0.058814100731",
        "1e8, 0.05, 0.071694235549"
    })
    void factor_fluids(double reynolds, double roughness, double factor) {
        within(factor, known(HaalandFriction.factor(reynolds, roughness)), 1e-10);
    }

    @Test
    void factor_outsideRange_refused() {
        refused(HaalandFriction.factor(3999, 0), "3999");
        refused(HaalandFriction.factor(1e4, 0.06), "0.06");
    }
}
