package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlywoodThicknessTest {
    /** EN 315 sanded, worked out with the formula as remembered; 6.5 mm also in a worked stack-up of 640 +3/-1. */
    @ParameterizedTest
    @CsvSource({"6.5, 0.395, 0.595", "9, 0.470, 0.670", "12, 0.560, 0.760", "15, 0.650, 0.850", "18, 0.740, 0.940"})
    void sanded_formula(double thickMm, double plus, double minus) {
        var tolerance = PlywoodThickness.sanded(thickMm).orElseThrow();
        assertEquals(plus, tolerance.plus(), 1e-12);
        assertEquals(minus, tolerance.minus(), 1e-12);
    }

    /** One mill's printed table of sanded boards: 12: +0.5/-0.7, 18: +0.7/-0.9, to a tenth. */
    @ParameterizedTest
    @CsvSource({"12, 0.5, 0.7", "18, 0.7, 0.9"})
    void sanded_millTable(double thickMm, double plus, double minus) {
        var tolerance = PlywoodThickness.sanded(thickMm).orElseThrow();
        assertEquals(plus, tolerance.plus(), 0.1);
        assertEquals(minus, tolerance.minus(), 0.1);
    }

    /** EN 315 unsanded, from memory: the upper bound grows by 0.6. */
    @Test
    void unsanded_upperBoundIsWider() {
        var tolerance = PlywoodThickness.unsanded(12).orElseThrow();
        assertEquals(1.16, tolerance.plus(), 1e-12);
        assertEquals(0.76, tolerance.minus(), 1e-12);
    }

    @Test
    void veneerAndBlock_nothing() {
        assertEquals(Optional.empty(), PlywoodThickness.sanded(2.9));
        assertEquals(Optional.empty(), PlywoodThickness.sanded(50.1));
    }
}
