package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.kernel.measure.Tolerance;

/** Against a timber association's knowledge sheet on EN 336. */
class SawnTimberTest {
    @ParameterizedTest
    @CsvSource({"45, 3, 1", "100, 3, 1", "101, 4, 2", "220, 4, 2"})
    void sawn_class1(double sizeMm, double plus, double minus) {
        assertEquals(Optional.of(new Tolerance(plus, minus)), SawnTimber.sawn(sizeMm));
    }

    @ParameterizedTest
    @CsvSource({"19, 1", "100, 1", "145, 1.5"})
    void planed_class2(double sizeMm, double either) {
        assertEquals(Optional.of(new Tolerance(either, either)), SawnTimber.planed(sizeMm));
    }

    @Test
    void noTimberIsThatLarge_nothing() {
        assertEquals(Optional.empty(), SawnTimber.sawn(301));
        assertEquals(Optional.empty(), SawnTimber.planed(0));
    }
}
