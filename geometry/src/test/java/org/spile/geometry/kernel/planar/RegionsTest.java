package org.spile.geometry.kernel.planar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.geometry.kernel.planar.OutlineTest.corners;
import static org.spile.geometry.kernel.planar.OutlineTest.outline;

import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Areas are closed forms, or those of JTS' own floating overlay and buffer. */
class RegionsTest {
    private static final List<Outline> SQUARE = List.of(outline("0,0 100,0 100,100 0,100"));
    private static final List<Outline> ANGLE = List.of(outline("0,0 300,0 300,100 100,100 100,250 0,250"));

    private static double area(List<Outline> outlines) {
        return outlines.stream().mapToDouble(Outline::areaMm2).sum();
    }

    @Test
    void overlayOfRectangles() {
        List<Outline> other = List.of(outline("50,50 150,50 150,150 50,150"));
        assertEquals(17500, area(Regions.union(List.of(SQUARE.get(0), other.get(0)))), 1e-9);
        assertEquals(List.of(outline("50,50 100,50 100,100 50,100")), Regions.intersection(SQUARE, other));
        assertEquals(7500, area(Regions.difference(SQUARE, other)), 1e-9);
        assertEquals(List.of(), Regions.intersection(SQUARE, List.of(outline("100,0 200,0 200,50"))));
        assertEquals(17500, Regions.areaMm2(List.of(SQUARE.get(0), other.get(0))), 1e-9);
        assertEquals(List.of(), Regions.union(List.of()));
        assertEquals(0, Regions.areaMm2(List.of()));
    }

    @Test
    void neighboursJoinWithoutCornersOnStraightLines() {
        List<Outline> joined =
                Regions.union(List.of(outline("0,0 100,0 100,100 0,100"), outline("100,0 180,0 180,100 100,100")));
        assertEquals(List.of(outline("0,0 180,0 180,100 0,100")), joined);
    }

    @Test
    void aHoleCutOutComesBackAsAHole() {
        List<Outline> ring = Regions.difference(SQUARE, List.of(outline("40,40 60,40 60,60 40,60")));
        assertEquals(1, ring.get(0).holes().size());
        assertEquals(9600, area(ring), 1e-9);
        assertEquals(SQUARE.get(0).withHoles(List.of(corners("40,40 40,60 60,60 60,40"))), ring.get(0));
    }

    @Test
    void euclideanGrowthOfASquareIsItsSteinerArea() {
        // Steiner's formula: A + P r + π r².
        for (double r : new double[] {0.5, 12, 100}) {
            double exact = 100 * 100 + 400 * r + Math.PI * r * r;
            double found = area(Regions.grown(SQUARE, r));
            assertTrue(found >= exact - 0.01 && found <= exact + 2 * Math.PI * r * Regions.ARC_SAGITTA_MM + 0.01);
        }
    }

    @Test
    void growthKeepsFlatsExactAndCoversTheArcs() {
        Outline grown = Regions.grown(SQUARE, 100).get(0);
        assertEquals(-100, grown.minX());
        assertEquals(200, grown.maxY());
        for (int degree = 0; degree <= 90; degree++) {
            double angle = Math.toRadians(degree);
            Vector2D rim = Vector2D.of(100 + 100 * Math.cos(angle), 100 + 100 * Math.sin(angle));
            assertTrue(
                    grown.contains(Vector2D.of(100 + 99.998 * Math.cos(angle), 100 + 99.998 * Math.sin(angle))),
                    () -> "covers " + rim);
        }
        double farthest = grown.shell().stream()
                .mapToDouble(p -> Math.hypot(Math.max(0, p.getX() - 100), Math.max(0, p.getY() - 100)))
                .max()
                .orElseThrow();
        assertTrue(farthest <= 100 + Regions.ARC_SAGITTA_MM + 0.001, () -> "stands out to " + farthest);
    }

    @Test
    void squareGrowthAndEuclideanGrowthDifferAtCorners() {
        assertEquals(List.of(outline("-30,-30 130,-30 130,130 -30,130")), Regions.grownSquare(SQUARE, 30));
        assertEquals(160 * 160, area(Regions.grownSquare(SQUARE, 30)), 1e-9);
        // The inner corner of the angle moves out along both sides.
        assertEquals(
                List.of(outline("-10,-10 310,-10 310,110 110,110 110,260 -10,260")), Regions.grownSquare(ANGLE, 10));
        assertThrows(
                IllegalArgumentException.class, () -> Regions.grownSquare(List.of(outline("0,0 1000,0 1000,50")), 5));
        assertThrows(IllegalArgumentException.class, () -> Regions.grown(SQUARE, -1));
    }

    @Test
    void insetUndoesSquareGrowthAndEatsThinParts() {
        assertEquals(List.of(outline("20,20 80,20 80,80 20,80")), Regions.inset(SQUARE, 20));
        assertEquals(List.of(), Regions.inset(SQUARE, 50));
        assertEquals(SQUARE, Regions.inset(SQUARE, 0));
        List<Outline> waist = Regions.inset(
                List.of(outline("0,0 100,0 100,45 140,45 140,0 240,0 240,100 140,100 140,55 100,55 100,100 0,100")),
                10);
        assertEquals(2, waist.size());
        // Inset corners at the waist turn round the two reflex corners; JTS' buffer as a second opinion.
        Geometry second = JtsShapes.polygon(
                        outline("0,0 100,0 100,45 140,45 140,0 240,0 240,100 140,100 140,55 100,55 100,100 0,100"))
                .buffer(-10, 64);
        assertEquals(second.getArea(), area(waist), 0.5);
    }

    @Test
    void randomOverlaysAgreeWithJtsInDoubles() {
        Random random = new Random(5);
        for (int run = 0; run < 100; run++) {
            Outline a = star(random, 3 + random.nextInt(12), 0, 0);
            Outline b = star(random, 3 + random.nextInt(12), random.nextInt(200), random.nextInt(200));
            Geometry first = JtsShapes.polygon(a);
            Geometry second = JtsShapes.polygon(b);
            assertEquals(first.intersection(second).getArea(), area(Regions.intersection(List.of(a), List.of(b))), 2);
            assertEquals(first.union(second).getArea(), area(Regions.union(List.of(a, b))), 2);
            assertEquals(first.difference(second).getArea(), area(Regions.difference(List.of(a), List.of(b))), 2);
            double growth = 1 + random.nextInt(50);
            assertEquals(first.buffer(growth, 90).getArea(), area(Regions.grown(List.of(a), growth)), 25 + growth);
        }
    }

    /** A simple polygon that winds once round a point. */
    static Outline star(Random random, int corners, double x, double y) {
        List<Vector2D> ring = new java.util.ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double reach = 30 + 200 * random.nextDouble();
            ring.add(Vector2D.of(x + reach * Math.cos(angle), y + reach * Math.sin(angle)));
        }
        return Outline.of(ring);
    }
}
