package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.rectangle;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.round;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallRoundsTest {
    /** python3-fluids 1.0.22, Colebrook then Darcy-Weisbach, counted up at 50 L/s. */
    @ParameterizedTest
    @CsvSource({"100, 100, 1", "131, 100, 3", "173, 100, 5", "100, 50, 7", "200, 100, 7", "250, 100, 13", "150, 40, 37"
    })
    void count_fluids(double bigMm, double smallMm, int count) {
        assertEquals(count, known(SmallRounds.count(round(bigMm), smallMm, 0.05)));
    }

    @Test
    void count_isTheLeast() {
        StraightDuct big = rectangle(314, 25);
        int n = known(SmallRounds.count(big, 40, 0.02));
        assertTrue(round(40).sizingPaPerM(0.02 / n) <= big.sizingPaPerM(0.02));
        assertTrue(round(40).sizingPaPerM(0.02 / (n - 1)) > big.sizingPaPerM(0.02));
    }

    @Test
    void count_tooMany_saysSo() {
        refused(SmallRounds.count(round(400), 4, 0.3), "1000 round ducts of 4 mm");
        refused(SmallRounds.count(round(100), 1, 0.02), "roughness");
        refused(SmallRounds.count(round(100), 50, 0), "none");
    }
}
