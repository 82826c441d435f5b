package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against two copies of ISO 2768-1. */
class GeneralToleranceTest {
    @ParameterizedTest
    @CsvSource({
        "MEDIUM, 700, 0.8", "COARSE, 1500, 3", "MEDIUM, 120, 0.3", "MEDIUM, 120.1, 0.5", "FINE, 0.5, 0.05",
        "FINE, 30, 0.1", "COARSE, 3, 0.2", "COARSE, 4000, 4", "VERY_COARSE, 6, 0.5", "VERY_COARSE, 2500, 8",
        "FINE, 2000, 0.5", "MEDIUM, 4000, 2"
    })
    void inTheTable(GeneralTolerance grade, double sizeMm, double eitherMm) {
        assertEquals(Optional.of(eitherMm), grade.of(sizeMm));
    }

    @Test
    void outsideTheTable_nothing() {
        assertEquals(Optional.empty(), GeneralTolerance.FINE.of(3000));
        assertEquals(Optional.empty(), GeneralTolerance.VERY_COARSE.of(2));
        assertEquals(Optional.empty(), GeneralTolerance.MEDIUM.of(0.4));
        assertEquals(Optional.empty(), GeneralTolerance.MEDIUM.of(4000.1));
    }
}
