package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class StackTest {
    private static final Reading ROOF = reading("roof", 2244, 3, 3);
    private static final Reading CEILING = reading("ceiling", 1962, 3, 3);
    private static final Reading LINING = reading("lining", 25, 0, 2);

    /** By hand: 2244 - 1962 - 25 = 257; at worst 2241 - 1965 - 25 = 251, at best 2247 - 1959 - 23 = 265. */
    @Test
    void worstCase_takesTheWorseEndOfEachReading() {
        Stack depth = Stack.of(ROOF).minus(Stack.of(CEILING)).minus(Stack.of(LINING));
        assertEquals(257, depth.valueMm());
        assertEquals(251, depth.worstLow());
        assertEquals(265, depth.worstHigh());
        assertEquals("0 + 2244 \u00b1 3 roof - 1962 \u00b1 3 ceiling - 25 +0/-2 lining = 257", depth.toString());
    }

    /** Two things hung from one roof don't pay for the roof: (2244 - 48) - (2244 - 60) = 12 exactly. */
    @Test
    void oneReadingUsedTwice_cancelsWithItsTolerance() {
        Stack gap = Stack.of(ROOF).minus(48).minus(Stack.of(ROOF).minus(60));
        assertEquals(12, gap.worstLow());
        assertEquals(12, gap.worstHigh());
        assertEquals(List.of(), gap.layers());
    }

    /** One reading used twice the same way errs twice: 2 x (25 +0/-2). */
    @Test
    void oneReadingUsedTwice_addsUp() {
        Stack both = Stack.of(LINING).plus(Stack.of(LINING));
        assertEquals(50, both.valueMm());
        assertEquals(46, both.worstLow());
        assertEquals(50, both.worstHigh());
        assertEquals(List.of(new Layer(LINING, 2)), both.layers());
    }

    @Test
    void numbersTypedNowhere_standEachForThemselves() {
        Reading loose = reading("", 10, 1, 1);
        assertEquals(2, Stack.of(loose).minus(Stack.of(loose)).worstHigh());
    }

    @Test
    void layers_keepTheOrderOfFirstAppearance() {
        Stack sum = Stack.of(CEILING)
                .plus(Stack.of(ROOF))
                .plus(Stack.of(LINING))
                .minus(Stack.of(ROOF).times(0.5));
        assertEquals(
                List.of("ceiling", "roof", "lining"),
                sum.layers().stream().map(layer -> layer.reading().path()).toList());
    }

    @Test
    void anglesEnterByTheirLever() {
        Reading turn = new Reading("turn", 0, 0.4, 0.4, Origin.TYPED, true, Kind.ANGLE, "0 deg \u00b1 0.4 deg");
        Stack aside = Stack.of(turn, 2200 * Math.PI / 180);
        assertEquals(15.359, aside.worstHigh(), 0.001);
    }

    @Test
    void nonsense_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Stack.constant(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Stack.of(ROOF).times(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Stack.of(ROOF).plus(Stack.of(reading("roof", 2245, 3, 3))));
        assertThrows(IllegalArgumentException.class, () -> reading("x", Double.NaN, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> reading("x", 1, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Layer(ROOF, 0));
    }

    /** The oracle tries all ends of all tolerances, one value per path. */
    @Property(tries = 300)
    void worstCase_isTheExtremeOfAllCorners(@ForAll long seed) {
        law(new Random(seed));
    }

    private static void law(Random random) {
        var readings = new ArrayList<Reading>();
        for (int i = 0; i < 5; i++) {
            readings.add(reading("r" + i, random.nextInt(1000), random.nextInt(10), random.nextInt(10)));
        }
        Stack stack = Stack.constant(random.nextInt(100));
        double[] factor = new double[5];
        double constant = stack.valueMm();
        for (int i = 0; i < 8; i++) {
            int which = random.nextInt(5);
            int times = random.nextInt(7) - 3;
            factor[which] += times;
            stack = stack.plus(Stack.of(readings.get(which)).times(times));
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < 32; corner++) {
            double sum = constant;
            for (int i = 0; i < 5; i++) {
                Reading reading = readings.get(i);
                sum += factor[i] * ((corner >> i & 1) == 0 ? reading.low() : reading.high());
            }
            low = Math.min(low, sum);
            high = Math.max(high, sum);
        }
        assertEquals(low, stack.worstLow(), 1e-9, stack.toString());
        assertEquals(high, stack.worstHigh(), 1e-9, stack.toString());
    }

    private static Reading reading(String path, double value, double plus, double minus) {
        return new Reading(path, value, plus, minus, Origin.TYPED, true, Kind.LENGTH, "");
    }
}
