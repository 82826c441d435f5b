package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.duct.Section;

class HydraulicDiameterTest {
    /** 2ab / (a + b), worked out apart; to a tenth of a millimetre. */
    @ParameterizedTest
    @CsvSource({"100, 15, 26.1", "600, 15, 29.3", "300, 20, 37.5", "200, 25, 44.4", "150, 60, 85.7", "1000, 300, 461.5"
    })
    void rectangle(double aMm, double bMm, double mm) {
        assertEquals(mm, HydraulicDiameter.mm(new Section.Rectangular(aMm, bMm)), 0.05);
        assertEquals(mm, HydraulicDiameter.mm(new Section.Rectangular(bMm, aMm)), 0.05);
    }

    /** Worked out apart. */
    @ParameterizedTest
    @CsvSource({"150, 60, 89.3", "200, 50, 82.8", "250, 75, 119.8", "300, 100, 156.0", "400, 100, 165.6"})
    void flatOval(double majorMm, double minorMm, double mm) {
        assertEquals(mm, HydraulicDiameter.mm(new Section.FlatOval(majorMm, minorMm)), 0.05);
    }

    @Test
    void circle_isItsDiameter() {
        assertEquals(125, HydraulicDiameter.mm(new Section.Round(125)), 1e-12);
    }
}
