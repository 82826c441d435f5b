package org.spile.analysis.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class VariationTest {
    @Test
    void endsWhereItShould() {
        assertEquals(List.of(0.0, 0.1, 0.2, 0.3), Variation.range(0, 0.3, 0.1));
        assertEquals(List.of(10.0, 14.0, 18.0), Variation.range(10, 20, 4));
        assertEquals(List.of(7.0), Variation.range(7, 7, 1));
        assertEquals(10_000_000_001L, Variation.count(0, 1e9, 0.1));
    }

    @Test
    void noRange() {
        assertThrows(IllegalArgumentException.class, () -> Variation.range(2, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Variation.range(1, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> Variation.range(1, 2, Double.NaN));
    }

    @Test
    void wantedEnds() {
        assertEquals(Aim.LEAST, Aim.usual("cavities.loft.ceiling.drop"));
        assertEquals(Aim.MOST, Aim.usual("cavities.loft.top.linings[1].pir"));
        assertEquals(Aim.NONE, Aim.usual("runs.lab-supply.path[3].high"));
    }
}
