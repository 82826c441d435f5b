package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DuctFaceTest {
    /** The sources' own feet, from the reproduction of the ASHRAE table: least and most. */
    @ParameterizedTest
    @CsvSource({
        "PVC, 0.00003, 0.00015", "ALU, 0.00012, 0.0002", "SEAMED, 0.00016, 0.00032", "SPIRAL, 0.0002, 0.0004",
        "GALV, 0.00027, 0.0005", "BOARD, 0.00049, 0.00128", "CORRUGATED, 0.0018, 0.0030", "FLEXIBLE, 0.0003, 0.003"
    })
    void range_inFeet(DuctFace face, double leastFt, double mostFt) {
        assertEquals(leastFt * 304.8, face.leastMm(), 0.006);
        assertEquals(mostFt * 304.8, face.mostMm(), 0.016);
    }

    @ParameterizedTest
    @EnumSource
    void each_hasItsSource(DuctFace face) {
        assertTrue(face.leastMm() <= face.roughMm() && face.roughMm() <= face.mostMm());
        assertTrue(face.source().contains("ASHRAE") || face.source().contains("Idelchik"), face.source());
        assertEquals(Optional.of(face), DuctFace.named(face.word()));
    }

    /** The handbooks' average category is 0.0003 ft. */
    @Test
    void usual_isTheAverage() {
        assertEquals(0.0003 * 304.8, DuctFace.usual().roughMm(), 0.002);
        assertEquals(Optional.empty(), DuctFace.named("mud"));
        assertEquals(
                DuctFace.values().length,
                Arrays.stream(DuctFace.values()).map(DuctFace::word).distinct().count());
    }
}
