package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionPolicyTest {
    /** python3-fluids 1.0.22, Colebrook extended down, and arithmetic for the straight line; relative roughness 0.0009. */
    @ParameterizedTest
    @CsvSource({
        "1000, 0.06400, 0.06313",
        "2000, 0.03200, 0.05014",
        "2300, 0.02783, 0.04801",
        "2500, 0.02935, 0.04680",
        "3000, 0.03317, 0.04432",
        "3500, 0.03699, 0.04238",
        "4000, 0.04081, 0.04081",
        "10000, 0.03224, 0.03224"
    })
    void factor_table(double reynolds, double policy, double turbulent) {
        within(policy, known(FrictionPolicy.factor(reynolds, 0.0009)), 3e-4);
        within(turbulent, known(FrictionPolicy.turbulent(reynolds, 0.0009)), 3e-4);
    }

    @Test
    void regime_changesWhereItSays() {
        assertEquals(Regime.LAMINAR, Regime.at(2300));
        assertEquals(Regime.TRANSITIONAL, Regime.at(2301));
        assertEquals(Regime.TRANSITIONAL, Regime.at(3999));
        assertEquals(Regime.TURBULENT, Regime.at(4000));
    }

    @Test
    void factor_outsideRange_refused() {
        refused(FrictionPolicy.factor(0, 0.001), "no flow");
        refused(FrictionPolicy.factor(1000, 0.06), "roughness of 0.06");
        refused(FrictionPolicy.turbulent(2e8, 0.001), "Reynolds");
    }
}
