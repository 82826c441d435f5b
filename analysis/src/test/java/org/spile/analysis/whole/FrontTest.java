package org.spile.analysis.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class FrontTest {
    /** The corners of a staircase are on the front; what lies under a corner is not; equal ones are both. */
    @Test
    void staircase() {
        List<List<Double>> worths =
                List.of(List.of(1.0, 5.0), List.of(2.0, 3.0), List.of(2.0, 2.0), List.of(4.0, 1.0), List.of(4.0, 1.0));
        assertEquals(List.of(true, true, false, true, true), Front.of(worths));
    }

    @Test
    void nothingOrOne() {
        assertEquals(List.of(), Front.of(List.of()));
        assertEquals(List.of(true), Front.of(List.of(List.of(0.0))));
    }

    @Property(tries = 400)
    void ofAnyChoices(@ForAll("choices") List<List<Double>> worths) {
        frontLaw(worths);
    }

    /** None of the front is beaten; each other one is beaten by one of the front; if there are choices there is a front. */
    private static void frontLaw(List<List<Double>> worths) {
        List<Boolean> front = Front.of(worths);
        assertEquals(worths.size(), front.size());
        assertEquals(worths.isEmpty(), front.stream().noneMatch(on -> on));
        for (int i = 0; i < worths.size(); i++) {
            boolean beatenByFront = false;
            for (int j = 0; j < worths.size(); j++) {
                boolean beats = Front.beats(worths.get(j), worths.get(i));
                assertFalse(front.get(i) && beats, worths.get(j) + " beats " + worths.get(i));
                beatenByFront |= front.get(j) && beats;
            }
            assertTrue(front.get(i) || beatenByFront, worths.get(i) + " is beaten by none of the front");
        }
    }

    @Provide
    Arbitrary<List<List<Double>>> choices() {
        return Arbitraries.integers()
                .between(1, 4)
                .flatMap(things -> Arbitraries.integers()
                        .between(0, 4)
                        .map(Integer::doubleValue)
                        .list()
                        .ofSize(things)
                        .list()
                        .ofMaxSize(25));
    }
}
