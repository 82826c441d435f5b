package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class LikelyTest {
    private static final double EXACT = 5e-6;

    /**
     * Opening 640 +3/-1, ply 6.5 +0.395/-0.595 twice, unit 600 +-2, pads 6 +-0.5 twice. By the formulas of Chase and
     * Parkinson (1991), worked by hand: centred 16.2, worst 10.21 to 22.19, root of squares 2.99834.
     */
    @Test
    void sixParts_lieRoundTheMiddleOfTheirTolerances() {
        Stack gap = reading("opening", 640, 3, 1)
                .minus(reading("ply.left", 6.5, 0.395, 0.595))
                .minus(reading("ply.right", 6.5, 0.395, 0.595))
                .minus(reading("unit", 600, 2, 2))
                .minus(reading("pad.left", 6, 0.5, 0.5))
                .minus(reading("pad.right", 6, 0.5, 0.5));
        Likely likely = Likely.of(gap).orElseThrow();
        assertEquals(15, gap.valueMm(), EXACT);
        assertEquals(10.21, gap.worstLow(), EXACT);
        assertEquals(22.19, gap.worstHigh(), EXACT);
        assertEquals(16.2, likely.middleMm(), EXACT);
        assertEquals(2.99834, likely.spreadMm(), EXACT);
        assertEquals(13.20166, likely.lowMm(), EXACT);
    }

    /** Four halves and more, by hand: 0.5, 0.8, 0.3, 1.2 add up to 2.8 and to 1.55563 in squares. */
    @Test
    void fourParts_areEnough_threeAreNot() {
        Stack three =
                reading("a", 10, 0.5, 0.5).plus(reading("b", 10, 0.8, 0.8)).plus(reading("c", 10, 0.3, 0.3));
        Stack four = three.minus(reading("d", 10, 1.2, 1.2));
        assertTrue(Likely.of(three).isEmpty());
        assertEquals(1.55563, Likely.of(four).orElseThrow().spreadMm(), EXACT);
        assertEquals(2.8, four.valueMm() - four.worstLow(), EXACT);
    }

    /** A sag of up to 2 comes in full beside what is squared. */
    @Test
    void movements_countInFull() {
        Stack four = reading("a", 10, 0.5, 0.5)
                .plus(reading("b", 10, 0.8, 0.8))
                .plus(reading("c", 10, 0.3, 0.3))
                .minus(reading("d", 10, 1.2, 1.2));
        Reading sag = new Reading("rail.sag", 0, 0, 2, Origin.TYPED, true, Kind.MOVEMENT, "");
        Likely likely = Likely.of(four.plus(Stack.of(sag))).orElseThrow();
        assertEquals(20, likely.middleMm(), EXACT);
        assertEquals(2, likely.movesMm(), EXACT);
        assertEquals(20 - 1.55563 - 2, likely.lowMm(), EXACT);
    }

    /** What is likely lies between the worst case and the middle of the tolerances. */
    @Property(tries = 500)
    void likely_liesBetweenTheWorstCaseAndTheMiddle(@ForAll long seed) {
        Random random = new Random(seed);
        Stack sum = Stack.ZERO;
        for (int i = 0; i < 4 + random.nextInt(8); i++) {
            boolean moves = i > 3 && random.nextBoolean();
            Reading reading = new Reading(
                    "part" + i,
                    moves ? 0 : random.nextDouble() * 500,
                    0.01 + random.nextDouble() * 4,
                    random.nextDouble() * 4,
                    Origin.TYPED,
                    true,
                    moves ? Kind.MOVEMENT : Kind.LENGTH,
                    "");
            sum = sum.plus(Stack.of(reading, random.nextDouble() * 4 - 2));
        }
        Likely likely = Likely.of(sum).orElseThrow();
        assertTrue(sum.worstLow() <= likely.lowMm() + 1e-9);
        assertTrue(likely.lowMm() <= likely.middleMm());
        assertTrue(likely.middleMm() + likely.spreadMm() <= sum.worstHigh() + 1e-9);
    }

    private static Stack reading(String path, double value, double plus, double minus) {
        return Stack.of(new Reading(path, value, plus, minus, Origin.TYPED, true, Kind.LENGTH, ""));
    }
}
