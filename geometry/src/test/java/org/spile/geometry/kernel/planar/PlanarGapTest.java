package org.spile.geometry.kernel.planar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.geometry.kernel.planar.OutlineTest.corners;
import static org.spile.geometry.kernel.planar.OutlineTest.outline;

import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Distances in the plane against JTS, depths against trying every direction. */
class PlanarGapTest {
    private final PlanarGap gap = new PlanarGap();

    private double measure(Footprint a, Footprint b) {
        gap.measure(a, b);
        double along = (gap.onBx() - gap.onAx()) * gap.directionX() + (gap.onBy() - gap.onAy()) * gap.directionY();
        assertEquals(gap.distanceMm(), along, 1e-6, "witnesses");
        assertEquals(gap.distanceMm(), gap.lowerMm(), 1e-9, "bounds");
        return gap.distanceMm();
    }

    private static Footprint convex(Random random, double x, double y) {
        List<Vector2D> points = new java.util.ArrayList<>();
        for (int i = 0; i < 3 + random.nextInt(8); i++) {
            points.add(Vector2D.of(x + 200 * random.nextDouble(), y + 200 * random.nextDouble()));
        }
        return Footprint.of(Outline.of(ConvexRing.around(points)));
    }

    private static Footprint any(Random random, double x, double y) {
        return random.nextInt(3) == 0
                ? convex(random, x, y)
                : Footprint.of(RegionsTest.star(random, 3 + random.nextInt(9), x, y));
    }

    private static double distanceByJts(Footprint a, Footprint b) {
        return JtsShapes.polygon(a.outline().orElseThrow())
                .distance(JtsShapes.polygon(b.outline().orElseThrow()));
    }

    @Test
    void randomPolygonsAgreeWithJts() {
        Random random = new Random(11);
        int apart = 0;
        for (int run = 0; run < 10_000; run++) {
            Footprint a = any(random, 0, 0);
            Footprint b = any(random, random.nextInt(900) - 450, random.nextInt(900) - 450);
            double expected = distanceByJts(a, b);
            gap.measure(a, b);
            apart += expected > 0 ? 1 : 0;
            assertEquals(expected, Math.max(0, gap.distanceMm()), 1e-9, "run " + run);
        }
        assertTrue(apart > 2_500 && apart < 9_500, "apart " + apart);
    }

    @Test
    void aDepthFreesInItsDirectionAndNoShorterShiftDoes() {
        Random random = new Random(12);
        for (int run = 0; run < 150; run++) {
            Footprint a = any(random, 0, 0);
            Footprint b = any(random, random.nextInt(300) - 150, random.nextInt(300) - 150);
            double found = measure(a, b);
            if (found > -0.1) {
                continue;
            }
            Footprint freed = shifted(b, gap.directionX() * -found, gap.directionY() * -found);
            assertTrue(common(a, freed) < 0.05, "run " + run + " is not freed");
            for (int degree = 0; degree < 360; degree += 5) {
                double angle = Math.toRadians(degree);
                double shift = -found - 0.05;
                Footprint moved = shifted(b, shift * Math.cos(angle), shift * Math.sin(angle));
                assertTrue(common(a, moved) > 0, "run " + run + " is freed at " + degree + "° already");
            }
        }
    }

    private static Footprint shifted(Footprint b, double dx, double dy) {
        return b.mapped(1, 0, 0, 1, dx, dy);
    }

    private static double common(Footprint a, Footprint b) {
        return JtsShapes.polygon(a.outline().orElseThrow())
                .intersection(JtsShapes.polygon(b.outline().orElseThrow()))
                .getArea();
    }

    @Test
    void discsAndSlots() {
        Footprint disc = Footprint.disc(0, 0, 50);
        assertEquals(20, measure(disc, Footprint.disc(100, 0, 30)), 1e-12);
        assertEquals(-30, measure(disc, Footprint.disc(50, 0, 30)), 1e-12);
        assertEquals(-80, measure(disc, Footprint.disc(0, 0, 30)), 1e-12);
        Footprint slot = Footprint.slot(Vector2D.of(-100, 90), Vector2D.of(100, 90), 15);
        assertEquals(25, measure(disc, slot), 1e-12);
        Footprint cross = Footprint.slot(Vector2D.of(20, 0), Vector2D.of(20, 200), 5);
        // The crossing slots part by moving the upright one past the lying one's end: 80 and both radii.
        assertEquals(-(80 + 20), measure(slot, cross), 1e-9);
        Footprint ahead = Footprint.slot(Vector2D.of(160, 90), Vector2D.of(300, 90), 15);
        assertEquals(60 - 30, measure(slot, ahead), 1e-9);
        assertEquals(-2, measure(Footprint.of(outline("48,-50 90,-50 90,50 48,50")), disc), 1e-12);
    }

    @Test
    void aDiscInTheHoleOfARing() {
        Footprint ring = Footprint.of(
                outline("0,0 400,0 400,400 0,400").withHoles(List.of(corners("100,100 300,100 300,300 100,300"))));
        assertEquals(30, measure(ring, Footprint.disc(180, 200, 50)), 1e-12);
        assertEquals(-20, measure(ring, Footprint.disc(130, 200, 50)), 1e-9);
        // Centre in the solid part, 30 from the hole: out through the hole.
        gap.measure(ring, Footprint.disc(70, 200, 50));
        assertEquals(-80, gap.distanceMm(), 2e-4);
        assertTrue(gap.lowerMm() <= -80 + 1e-9 && gap.lowerMm() > -80.001);
    }

    @Test
    void convexPartsFillTheOutlineWithoutOverlap() {
        Random random = new Random(13);
        for (int run = 0; run < 300; run++) {
            Outline star = RegionsTest.star(random, 4 + random.nextInt(14), 0, 0);
            List<Outline> parts = ConvexParts.of(star);
            assertEquals(
                    star.areaMm2(), parts.stream().mapToDouble(Outline::areaMm2).sum(), 1e-6);
            assertTrue(parts.stream().allMatch(Outline::isConvex));
        }
        assertEquals(
                2,
                ConvexParts.of(outline("0,0 300,0 300,100 100,100 100,250 0,250"))
                        .size());
    }

    @Test
    void circumscribedCoversTheRoundShape() {
        Outline disc = Footprint.disc(10, 20, 100).circumscribed(0.05).get(0);
        double exact = Math.PI * 100 * 100;
        assertTrue(disc.areaMm2() > exact && disc.areaMm2() < exact + 2 * Math.PI * 100 * 0.05);
        assertEquals(110, disc.maxX(), 1e-9);
        Outline slot = Footprint.slot(Vector2D.of(0, 0), Vector2D.of(300, 0), 50)
                .circumscribed(0.05)
                .get(0);
        double stadium = 300 * 100 + Math.PI * 2500;
        assertTrue(slot.areaMm2() >= stadium && slot.areaMm2() < stadium + 20);
        assertEquals(50, slot.maxY(), 1e-9);
        assertTrue(Footprint.disc(0, 0, 5).contains(Vector2D.of(3, 4)));
    }
}
