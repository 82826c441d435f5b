package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** Travels; the values are closed forms, or found by sampling the distance densely. */
class TravelTest {
    private static final Vector3D X = Vector3D.of(1, 0, 0);
    private static final Vector3D DOWN = Vector3D.of(0, 0, -1);
    private static final Solid CUBE = Prism.box(0, 0, 0, 100, 100, 100);

    private static void assertInterval(double from, double to, Optional<ExitInterval> found) {
        assertTrue(found.isPresent(), "an interval");
        assertEquals(from, found.orElseThrow().fromMm(), 1e-6);
        assertEquals(to, found.orElseThrow().toMm(), 1e-6);
    }

    @Test
    void boxesAlongAnAxis() {
        Solid post = Prism.box(250, 40, 0, 290, 60, 300);
        assertInterval(150, 290, ExitInterval.of(CUBE, post, X, 0));
        assertInterval(150, 290, ExitInterval.of(CUBE, post, X.multiply(7), 0));
        assertInterval(140, 300, ExitInterval.of(CUBE, post, X, 10));
        assertInterval(-290, -150, ExitInterval.of(CUBE, post, X.negate(), 0));
        assertInterval(150, 290, ExitInterval.of(post, CUBE, X.negate(), 0));
    }

    @Test
    void aCornerPassedAtADistanceBlocksByThePythagoreanRest() {
        // The post's edge stands 6 mm beside the path; within a margin of 10 mm that takes 8 mm off each end.
        Solid post = Prism.box(250, 106, 0, 290, 160, 100);
        assertInterval(150 - 8, 290 + 8, ExitInterval.of(CUBE, post, X, 10));
        assertEquals(Optional.empty(), ExitInterval.of(CUBE, post, X, 6));
        assertTrue(ExitInterval.of(CUBE, post, X, 6.001).isPresent());
        assertEquals(Optional.empty(), ExitInterval.of(CUBE, post, X, 0));
    }

    @Test
    void aSlotOfExactlyTheNeededWidthIsFree() {
        for (double yaw : new double[] {0, 0.3, 1.1, 2.9}) {
            Move turn = Move.turn(yaw, Vector3D.of(500, 700, 0));
            Vector3D way = turn.applyDirection(X);
            for (double margin : new double[] {0, 5}) {
                Solid left = Prism.box(150, 100 + margin, 0, 400, 300, 100).moved(turn);
                Solid right = Prism.box(150, -200, 0, 400, -margin, 100).moved(turn);
                Solid part = CUBE.moved(turn);
                assertEquals(Optional.empty(), ExitInterval.of(part, left, way, margin), "yaw " + yaw);
                assertEquals(Optional.empty(), ExitInterval.of(part, right, way, margin), "yaw " + yaw);
                Solid tight = left.moved(Move.shift(turn.applyDirection(Vector3D.of(0, -0.01, 0))));
                assertTrue(ExitInterval.of(part, tight, way, margin).isPresent(), "yaw " + yaw);
            }
        }
    }

    @Test
    void aRoundPipeInASlotOfItsWidthIsFree() {
        Solid pipe = RoundCylinder.of(Vector3D.of(0, 0, 0), Vector3D.of(0, 0, 80), 50);
        Solid wall = Prism.box(200, 50, -100, 600, 90, 200);
        assertEquals(Optional.empty(), ExitInterval.of(pipe, wall, X, 0));
        assertInterval(
                200 - Math.sqrt(50 * 50 - 49 * 49),
                600 + Math.sqrt(50 * 50 - 49 * 49),
                ExitInterval.of(pipe, wall.moved(Move.shift(0, -1, 0)), X, 0));
    }

    @Test
    void intervalsAgreeWithDenseSamples() {
        RandomSolids random = new RandomSolids(31);
        List<ConvexPolyhedron> stock = random.stock(40);
        int met = 0;
        for (int run = 0; run < 400; run++) {
            Solid moving = random.of(stock).moved(random.anyTurn());
            Solid fixed = random.of(stock).moved(random.anyTurn().then(random.shift(300)));
            double margin = run % 2 == 0 ? 0 : random.between(0, 40);
            Vector3D way = random.direction();
            Optional<ExitInterval> found = ExitInterval.of(moving, fixed, way, margin);
            met += found.isPresent() ? 1 : 0;
            for (int k = 0; k <= 100; k++) {
                double t = -1200 + 24 * k;
                double distance = Clearance.between(moving.moved(Move.shift(way.multiply(t))), fixed)
                        .upperMm();
                boolean inside = found.isPresent()
                        && t > found.get().fromMm()
                        && t < found.get().toMm();
                assertEquals(distance < margin, inside, "run " + run + " t " + t + " distance " + distance);
            }
            if (found.isPresent()) {
                for (double t : new double[] {found.get().fromMm(), found.get().toMm()}) {
                    double distance = Clearance.between(moving.moved(Move.shift(way.multiply(t))), fixed)
                            .upperMm();
                    assertEquals(margin, distance, 1e-6, "run " + run);
                }
            }
        }
        assertTrue(met > 100, "met " + met);
    }

    @Test
    void aConcaveFixtureLeavesPockets() {
        Solid comb = Prism.of(
                Outline.of(List.of(
                        Vector2D.of(0, 0),
                        Vector2D.of(600, 0),
                        Vector2D.of(600, 100),
                        Vector2D.of(500, 100),
                        Vector2D.of(500, 40),
                        Vector2D.of(300, 40),
                        Vector2D.of(300, 100),
                        Vector2D.of(0, 100))),
                0,
                50);
        Body plate = Body.of(Prism.box(-200, 50, 10, 0, 90, 20));
        LeastTravel least =
                LeastTravel.clear(List.of(plate.moved(Move.shift(50, 0, 0))), List.of(Body.of(comb)), X, (i, j) -> 0);
        // The plate, 200 long, just fits the recess from 300 to 500: a pocket of one point.
        assertEquals(450, least.travelMm(), 1e-9);
        assertEquals(750, least.lastBlockedMm(), 1e-9);
        assertEquals(1, least.pockets().size());
        assertEquals(450, least.pockets().get(0).fromMm(), 1e-9);
        assertEquals(450, least.pockets().get(0).toMm(), 1e-6);
        assertInterval(0, 800, ExitInterval.of(plate.solids().get(0), comb, X, 0));
        assertEquals(2, ExitInterval.all(plate.solids().get(0), comb, X, 0).size());
    }

    @Test
    void leastTravelNamesThePairThatGoverns() {
        Body unit = Body.of(Prism.box(0, 0, 200, 600, 400, 420));
        Body beam = Body.of(Prism.box(100, -500, 400, 160, 900, 500));
        Body pipe = Body.of(Prism.round(300, 200, 30, 411, 600));
        LeastTravel least = LeastTravel.clear(List.of(unit), List.of(pipe, beam), DOWN, (i, j) -> j == 0 ? 5 : 12);
        assertEquals(32, least.travelMm(), 1e-9);
        assertEquals(1, least.governing().orElseThrow().fixed());
        LeastTravel exempt = LeastTravel.clear(
                List.of(unit), List.of(pipe, beam), DOWN, (i, j) -> j == 0 ? 5 : Double.NEGATIVE_INFINITY);
        assertEquals(14, exempt.travelMm(), 1e-9);
        LeastTravel free = LeastTravel.clear(List.of(unit), List.of(), DOWN, (i, j) -> 0);
        assertEquals(0, free.travelMm());
        assertTrue(free.governing().isEmpty());
    }

    @Test
    void greatestTravelStopsAtTheFirstThingInTheWay() {
        Body unit = Body.of(Prism.box(0, 0, 200, 600, 400, 420));
        Body shelf = Body.of(Prism.box(0, 0, 100, 600, 400, 118));
        Body floor = Body.of(Prism.box(-900, -900, -50, 900, 900, 0));
        GreatestTravel travel = GreatestTravel.free(List.of(unit), List.of(floor, shelf), DOWN, (i, j) -> 2);
        assertEquals(80, travel.travelMm(), 1e-9);
        assertEquals(1, travel.governing().orElseThrow().fixed());
        assertEquals(
                Double.POSITIVE_INFINITY,
                GreatestTravel.free(List.of(unit), List.of(floor), X, (i, j) -> 2)
                        .travelMm());
        assertEquals(
                0,
                GreatestTravel.free(List.of(unit), List.of(shelf), DOWN, (i, j) -> 90)
                        .travelMm());
    }

    @Test
    void marginsJustUnderAndOver() {
        Body unit = Body.of(Prism.box(0, 0, 0, 100, 100, 100));
        Body wall = Body.of(Prism.box(110, -50, 0, 120, 150, 300));
        for (double margin : new double[] {9.99, 10, 10 + 5e-7}) {
            assertEquals(
                    0,
                    LeastTravel.clear(List.of(unit), List.of(wall), X.negate(), (i, j) -> margin)
                            .travelMm());
        }
        assertEquals(
                0.01,
                LeastTravel.clear(List.of(unit), List.of(wall), X.negate(), (i, j) -> 10.01)
                        .travelMm(),
                1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ExitInterval.of(CUBE, CUBE, Vector3D.ZERO, 0));
        assertThrows(IllegalArgumentException.class, () -> ExitInterval.of(CUBE, CUBE, X, -1));
        assertThrows(IllegalArgumentException.class, () -> new ExitInterval(2, 1));
    }
}
