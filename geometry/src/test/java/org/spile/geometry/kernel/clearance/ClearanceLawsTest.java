package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** Laws that hold for any two solids. Each law is a method of its own, so that any runner can drive it. */
class ClearanceLawsTest {
    /** Two solids and a direction, all from one number. */
    private record Case(Solid a, Solid b, Vector3D way, double shiftMm, double yawRad, boolean exact) {
        static Case of(long seed) {
            RandomSolids random = new RandomSolids(seed);
            Solid a = solid(random);
            Solid b = solid(random).moved(random.yaw().then(random.shift(400)));
            boolean exact = a.isConvex() && b.isConvex() && isPrism(a) == isPrism(b) && !lies(a) && !lies(b);
            return new Case(a, b, random.direction(), random.between(0, 300), random.between(0, 6), exact);
        }

        /** A round prism against a tilted polyhedron has bounds for its depth, two prisms have the depth itself. */
        private static boolean isPrism(Solid solid) {
            return solid instanceof Prism;
        }

        private static boolean lies(Solid solid) {
            return solid instanceof RoundCylinder;
        }

        private static Solid solid(RandomSolids random) {
            double top = random.between(5, 300);
            Vector3D from = random.place(100);
            return switch (random.random.nextInt(7)) {
                case 0 -> random.box().moved(random.anyTurn());
                case 1 -> random.lump();
                case 2 -> Prism.box(0, 0, 0, random.between(5, 300), random.between(5, 300), top);
                case 3 -> Prism.round(0, 0, random.between(5, 100), 0, top);
                case 4 ->
                    Prism.of(
                            Outline.of(List.of(
                                    Vector2D.of(0, 0),
                                    Vector2D.of(300, 0),
                                    Vector2D.of(300, 80),
                                    Vector2D.of(90, 80),
                                    Vector2D.of(90, 200),
                                    Vector2D.of(0, 200))),
                            0,
                            top);
                case 5 ->
                    Prism.of(Footprint.slot(Vector2D.of(0, 0), Vector2D.of(200, 0), 30), 0, top)
                            .rounded(random.between(0, 20));
                default -> RoundCylinder.of(from, from.add(random.direction().multiply(250)), 40);
            };
        }
    }

    static void swappingTheTwoKeepsTheDistance(Case c) {
        Gap there = Clearance.between(c.a, c.b);
        Gap back = Clearance.between(c.b, c.a);
        assertEquals(there.upperMm(), back.upperMm(), c.exact ? 1e-8 : 0.5);
        assertTrue(there.lowerMm() <= back.upperMm() + 1e-8 && back.lowerMm() <= there.upperMm() + 1e-8);
    }

    static void movingBothTogetherKeepsTheDistance(Case c) {
        Move move = Move.turn(c.yawRad, Vector3D.of(1000, -500, 0)).then(Move.shift(10_000, 10_000, 3_000));
        Gap here = Clearance.between(c.a, c.b);
        Gap there = Clearance.between(c.a.moved(move), c.b.moved(move));
        assertEquals(here.upperMm(), there.upperMm(), c.exact || here.upperMm() > 0 ? 1e-7 : 0.5);
    }

    static void roundingTakesItsRadiusOff(Case c) {
        double apart = Clearance.between(c.a, c.b).upperMm();
        double rounded = Clearance.between(c.a.rounded(c.shiftMm / 10), c.b).upperMm();
        boolean exact = c.exact || rounded > 0;
        assertEquals(apart - c.shiftMm / 10, rounded, exact ? 1e-8 : c.shiftMm + 500);
        assertTrue(rounded <= apart + 1e-8);
    }

    static void aShiftChangesTheDistanceByNoMoreThanItself(Case c) {
        Gap before = Clearance.between(c.a, c.b);
        Gap after = Clearance.between(c.a, c.b.moved(Move.shift(c.way.multiply(c.shiftMm))));
        assertTrue(after.lowerMm() <= before.upperMm() + c.shiftMm + 1e-8);
        assertTrue(after.upperMm() >= before.lowerMm() - c.shiftMm - 1e-8);
    }

    static void alongTheDirectionItGrowsByTheWholeShift(Case c) {
        Gap before = Clearance.between(c.a, c.b);
        if (before.lowerMm() > 0 || c.exact) {
            Move away = Move.shift(before.direction().multiply(c.shiftMm));
            double after = Clearance.between(c.a, c.b.moved(away)).upperMm();
            double least = before.lowerMm() + c.shiftMm;
            assertTrue(!c.a.isConvex() || !c.b.isConvex() || after >= least - 1e-7, after + " after " + least);
        }
    }

    static void witnessesLieOneDistanceApart(Case c) {
        Gap gap = Clearance.between(c.a, c.b);
        double along = gap.onB().subtract(gap.onA()).dot(gap.direction());
        if (gap.upperMm() > 0) {
            assertEquals(gap.upperMm(), gap.onA().distance(gap.onB()), 1e-6);
            assertEquals(gap.upperMm(), along, c.exact ? 1e-6 : 1e-4);
        } else if (c.exact) {
            assertEquals(gap.upperMm(), along, 1e-6);
        }
    }

    static void aWiderMarginBlocksMore(Case c) {
        Optional<ExitInterval> narrow = ExitInterval.of(c.a, c.b, c.way, c.shiftMm / 10);
        Optional<ExitInterval> wide = ExitInterval.of(c.a, c.b, c.way, c.shiftMm / 10 + 1);
        if (narrow.isPresent()) {
            assertTrue(wide.orElseThrow().fromMm() <= narrow.get().fromMm() + 1e-6);
            assertTrue(wide.orElseThrow().toMm() >= narrow.get().toMm() - 1e-6);
        }
    }

    static void theLeastTravelIsClear(Case c) {
        double margin = c.shiftMm / 10;
        double least = LeastTravel.clear(List.of(Body.of(c.a)), List.of(Body.of(c.b)), c.way, (i, j) -> margin)
                .travelMm();
        Gap gap = Clearance.between(c.a.moved(Move.shift(c.way.multiply(least))), c.b);
        assertTrue(gap.lowerMm() >= margin - 1e-6 || margin == 0, gap + " after " + least);
        if (least > 0.1) {
            Gap before = Clearance.between(c.a.moved(Move.shift(c.way.multiply(least - 0.1))), c.b);
            assertTrue(before.lowerMm() < margin, before + " before " + least);
        }
    }

    @Property(tries = 300, seed = "20")
    void symmetric(@ForAll long seed) {
        swappingTheTwoKeepsTheDistance(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void unmovedByCommonMoves(@ForAll long seed) {
        movingBothTogetherKeepsTheDistance(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void rounding(@ForAll long seed) {
        roundingTakesItsRadiusOff(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void boundedByTheShift(@ForAll long seed) {
        aShiftChangesTheDistanceByNoMoreThanItself(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void wayOut(@ForAll long seed) {
        alongTheDirectionItGrowsByTheWholeShift(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void witnesses(@ForAll long seed) {
        witnessesLieOneDistanceApart(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void monotoneInMargin(@ForAll long seed) {
        aWiderMarginBlocksMore(Case.of(seed));
    }

    @Property(tries = 300, seed = "20")
    void leastTravel(@ForAll long seed) {
        theLeastTravelIsClear(Case.of(seed));
    }
}
