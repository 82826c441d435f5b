package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.duct.Section;

class HeytDiazEquivalentTest {
    /** Worked out with python3-fluids 1.0.22's arithmetic: area (m2), perimeter (m) and De. */
    @ParameterizedTest
    @CsvSource({
        "150, 60, 0.00823, 0.3685, 99.0",
        "200, 50, 0.00946, 0.4571, 102.4",
        "250, 75, 0.01754, 0.5856, 141.6",
        "300, 100, 0.02785, 0.7142, 179.9",
        "400, 100, 0.03785, 0.9142, 204.8"
    })
    void equivalent_table(double majorMm, double minorMm, double areaM2, double perimeterM, double mm) {
        var oval = new Section.FlatOval(majorMm, minorMm);
        within(areaM2, oval.areaMm2() * 1e-6, 1e-3);
        within(perimeterM, oval.perimeterMm() * 1e-3, 2e-4);
        within(mm, known(HeytDiazEquivalent.mm(oval)), 3e-3);
        within(mm, known(HeytDiazEquivalent.mm(new Section.FlatOval(minorMm, majorMm))), 3e-3);
    }

    /** The formula worked out apart, in Python. */
    @Test
    void equivalent_allDigits() {
        within(99.029336164, known(HeytDiazEquivalent.mm(new Section.FlatOval(150, 60))), 1e-11);
    }

    @Test
    void equivalent_veryFlat_refused() {
        refused(HeytDiazEquivalent.mm(new Section.FlatOval(401, 50)), "8.02");
    }
}
