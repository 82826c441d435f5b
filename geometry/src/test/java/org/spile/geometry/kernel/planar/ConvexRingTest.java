package org.spile.geometry.kernel.planar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class ConvexRingTest {
    @Test
    void cornersAreLeft_pointsOnSidesAndInsideAreNot() {
        List<Vector2D> ring = ConvexRing.around(List.of(
                Vector2D.of(0, 0),
                Vector2D.of(4, 0),
                Vector2D.of(2, 0),
                Vector2D.of(4, 3),
                Vector2D.of(1, 1),
                Vector2D.of(0, 3),
                Vector2D.of(0, 2),
                Vector2D.of(0, 0)));
        assertEquals(List.of(Vector2D.of(0, 0), Vector2D.of(4, 0), Vector2D.of(4, 3), Vector2D.of(0, 3)), ring);
    }

    @Test
    void pointsOnOneLine_noRing() {
        assertEquals(
                2,
                ConvexRing.around(List.of(Vector2D.of(0, 0), Vector2D.of(1, 1), Vector2D.of(2, 2)))
                        .size());
    }

    @Property(tries = 300)
    void rounding_losesNoCorner(@ForAll long seed) {
        roundingLosesNoCorner(new Random(seed));
    }

    /** A rectangle, several points on each of its sides, each a few roundings off: four corners and the rectangle's area. */
    private static void roundingLosesNoCorner(Random random) {
        double x = 3000 * random.nextDouble() - 1500;
        double y = 3000 * random.nextDouble() - 1500;
        double wide = 1 + 500 * random.nextDouble();
        double high = 1 + 500 * random.nextDouble();
        List<Vector2D> points = new ArrayList<>();
        for (double share : new double[] {0, 0, 0.3, 0.6, 1, 1}) {
            points.add(Vector2D.of(off(x, random), off(y + share * high, random)));
            points.add(Vector2D.of(off(x + wide, random), off(y + share * high, random)));
            points.add(Vector2D.of(off(x + share * wide, random), off(y, random)));
            points.add(Vector2D.of(off(x + share * wide, random), off(y + high, random)));
        }
        List<Vector2D> ring = ConvexRing.around(points);
        assertEquals(4, ring.size(), ring.toString());
        assertEquals(wide * high, Outline.of(ring).areaMm2(), 1e-6, ring.toString());
    }

    private static double off(double mm, Random random) {
        return mm + (random.nextInt(5) - 2) * Math.ulp(mm);
    }
}
