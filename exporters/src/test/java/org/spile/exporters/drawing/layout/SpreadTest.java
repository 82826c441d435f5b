package org.spile.exporters.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void twoPlacesTooClose_moveApartEvenly() {
        assertEquals(List.of(98.0, 102.0), Spread.apart(List.of(100.0, 100.0), 4));
    }

    @Test
    void placesFarApart_stay() {
        assertEquals(List.of(0.0, 10.0, 30.0), Spread.apart(List.of(0.0, 10.0, 30.0), 4));
    }

    @Property(tries = 300)
    void pitchIsKept_andNoNudgeDoesBetter(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 100) Double> places) {
        law(places.stream().sorted().toList());
    }

    /** Least squares: no single place can be moved within the pitch so that the sum of squares falls. */
    static void law(List<Double> wanted) {
        var apart = Spread.apart(wanted, 5);
        for (var i = 1; i < apart.size(); i++) {
            assertTrue(apart.get(i) - apart.get(i - 1) >= 5 - 1e-9);
        }
        for (var i = 0; i < apart.size(); i++) {
            var free = i + 1 == apart.size() || apart.get(i + 1) - apart.get(i) > 5 + 1e-6;
            var freeBelow = i == 0 || apart.get(i) - apart.get(i - 1) > 5 + 1e-6;
            if (free && freeBelow) {
                assertEquals(wanted.get(i), apart.get(i), 1e-6);
            }
        }
        assertEquals(
                wanted.stream().mapToDouble(Double::doubleValue).sum(),
                apart.stream().mapToDouble(Double::doubleValue).sum(),
                1e-6);
    }
}
