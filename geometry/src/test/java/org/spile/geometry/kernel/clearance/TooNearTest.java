package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Forbidden places against closed forms (the Minkowski sum of two rectangles, of a rectangle and a disc), and against brute
 * force: the distance of the pair, measured by itself at every place tried.
 */
class TooNearTest {
    private static final GlidePlane LEVEL = GlidePlane.level(0);
    private static final Prism UNIT = Prism.box(-10, -5, -2, 10, 5, 2);

    @Test
    void twoBoxesForbidTheRectangleOfTheirSummedSides() {
        Outline ring = only(UNIT, Prism.box(100, 100, -1, 140, 120, 1), 0, LEVEL);
        assertEquals(90, ring.minX(), 1e-9);
        assertEquals(150, ring.maxX(), 1e-9);
        assertEquals(95, ring.minY(), 1e-9);
        assertEquals(125, ring.maxY(), 1e-9);
        assertEquals(60 * 30, ring.areaMm2(), 1e-6);
    }

    @Test
    void aDistanceRoundsTheCornersFromOutside() {
        Outline ring = only(UNIT, Prism.box(100, 100, -1, 140, 120, 1), 5, LEVEL);
        assertEquals(85, ring.minX(), 1e-9);
        double exact = 60 * 30 + 2 * (60 + 30) * 5 + Math.PI * 25;
        assertTrue(ring.areaMm2() >= exact, "never less than the true sum");
        assertTrue(ring.areaMm2() <= exact + 2 * Math.PI * 5 * TooNear.SAGITTA_MM, "by more than the stated bound");
    }

    @Test
    void aGapInHeightLeavesASmallerDisc() {
        Outline ring = only(UNIT, Prism.box(100, 100, 5, 140, 120, 6), 5, LEVEL);
        assertEquals(90 - 4, ring.minX(), 1e-9, "3 above: 4 aside of 5");
        assertTrue(places(UNIT, Prism.box(100, 100, 7, 140, 120, 8), 5, LEVEL).isEmpty(), "just kept is kept");
    }

    @Test
    void aRoundThingForbidsADisc() {
        Outline ring = only(Prism.round(0, 0, 20, -1, 1), Prism.round(50, 0, 30, -1, 1), 0, LEVEL);
        assertEquals(Math.PI * 50 * 50, ring.areaMm2(), 2 * Math.PI * 50 * TooNear.SAGITTA_MM);
        assertEquals(0, ring.minX(), TooNear.SAGITTA_MM);
    }

    @Test
    void whatGlidesUpASlopePassesOverALowThing() {
        // 1 in 2: the underside, 2 below the reference, is 10 up at x = 24, where the front edge is at 34.
        GlidePlane slope = new GlidePlane(0, 0.5, 0);
        Outline ring = only(UNIT, Prism.box(-200, -50, -100, 200, 50, 10), 0, slope);
        assertEquals(24, ring.maxX(), 1e-9);
        assertEquals(-204, ring.minX(), 1e-9, "its top, 2 above the reference, is 100 down there");
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GlidePlane(0, 11, 0));
        assertThrows(IllegalArgumentException.class, () -> new GlidePlane(Double.NaN, 0, 0));
    }

    @Test
    void placesAgreeWithTheMeasuredDistance() {
        Random random = new Random(20240607);
        int tried = 0;
        int inside = 0;
        for (int i = 0; i < 1600; i++) {
            Case one = Case.of(random);
            List<Outline> rings = places(one.moving, one.fixed, one.distanceMm, one.plane);
            for (int k = 0; k < 8; k++) {
                Vector2D at = one.place(random);
                inside += law(one, rings, at) ? 1 : 0;
                tried++;
            }
        }
        assertTrue(tried >= 10_000 && inside > tried / 10 && inside < tried * 9 / 10, inside + " of " + tried);
    }

    /** A place is forbidden iff the distance measured there falls short, but for the rounding's bound at the border. */
    private static boolean law(Case one, List<Outline> rings, Vector2D at) {
        double lift = one.plane.at(at.getX(), at.getY());
        Solid there = one.moving.moved(Move.shift(at.getX(), at.getY(), lift));
        PairDistance pair = new PairDistance();
        pair.measure(there, one.fixed);
        boolean forbidden = rings.stream().anyMatch(ring -> ring.contains(at));
        if (pair.upperMm() < one.distanceMm - 1e-6) {
            assertTrue(forbidden, () -> "allowed at " + at + ": " + one);
        }
        if (pair.lowerMm() > one.distanceMm + 1e-6 && forbidden) {
            assertTrue(nearBorder(one, at), () -> "forbidden at " + at + ": " + one);
        }
        return forbidden;
    }

    /** Whether a step of twice the sagitta some way makes it too near. */
    private static boolean nearBorder(Case one, Vector2D at) {
        for (int k = 0; k < 64; k++) {
            double angle = k * Math.PI / 32;
            double x = at.getX() + 2 * TooNear.SAGITTA_MM * Math.cos(angle);
            double y = at.getY() + 2 * TooNear.SAGITTA_MM * Math.sin(angle);
            PairDistance pair = new PairDistance();
            pair.measure(one.moving.moved(Move.shift(x, y, one.plane.at(x, y))), one.fixed);
            if (pair.lowerMm() < one.distanceMm) {
                return true;
            }
        }
        return false;
    }

    private static Outline only(Solid moving, Solid fixed, double distanceMm, GlidePlane plane) {
        List<Outline> rings = places(moving, fixed, distanceMm, plane);
        assertEquals(1, rings.size());
        return rings.get(0);
    }

    private static List<Outline> places(Solid moving, Solid fixed, double distanceMm, GlidePlane plane) {
        return new TooNear()
                .places(moving, fixed, distanceMm, plane).stream()
                        .map(Outline::of)
                        .toList();
    }

    /** Two random things, a distance and a plane. */
    private record Case(Solid moving, Solid fixed, double distanceMm, GlidePlane plane) {
        static Case of(Random random) {
            Solid moving = thing(random, 0);
            Solid fixed = thing(random, 200);
            double distance = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 60;
            boolean slopes = random.nextBoolean();
            GlidePlane plane = new GlidePlane(
                    (random.nextDouble() - 0.5) * 150,
                    slopes ? (random.nextDouble() - 0.5) * 1.5 : 0,
                    slopes ? (random.nextDouble() - 0.5) * 1.5 : 0);
            return new Case(moving, fixed, distance, plane);
        }

        Vector2D place(Random random) {
            double reach = 150 + distanceMm;
            return Vector2D.of(
                    200 + (random.nextDouble() - 0.5) * 2 * reach, 200 + (random.nextDouble() - 0.5) * 2 * reach);
        }

        private static Solid thing(Random random, double at) {
            double yaw = random.nextInt(3) == 0 ? 0 : random.nextDouble() * Math.PI;
            Move move = Move.turn(yaw, Vector3D.ZERO).then(Move.shift(at, at, 0));
            double a = 5 + random.nextDouble() * 60;
            double b = 5 + random.nextDouble() * 60;
            double c = 5 + random.nextDouble() * 60;
            return switch (random.nextInt(5)) {
                case 0 -> Prism.round(0, 0, a, -c, c).moved(move);
                case 1 -> wedge(a, b, c).moved(move);
                case 2 -> lShape(a, b, c).moved(move);
                default -> Prism.box(-a, -b, -c, a, b, c).moved(move);
            };
        }

        private static Solid wedge(double a, double b, double c) {
            List<Vector3D> corners = new ArrayList<>();
            for (double y : new double[] {-b, b}) {
                corners.add(Vector3D.of(-a, y, -c));
                corners.add(Vector3D.of(a, y, -c));
                corners.add(Vector3D.of(-a, y, -c / 2));
                corners.add(Vector3D.of(a, y, c));
            }
            return ConvexPolyhedron.hull(corners);
        }

        private static Solid lShape(double a, double b, double c) {
            Outline plan = Outline.of(List.of(
                    Vector2D.of(-a, -b),
                    Vector2D.of(a, -b),
                    Vector2D.of(a, -b / 2),
                    Vector2D.of(-a / 2, -b / 2),
                    Vector2D.of(-a / 2, b),
                    Vector2D.of(-a, b)));
            return Prism.of(plan, -c, c);
        }
    }
}
