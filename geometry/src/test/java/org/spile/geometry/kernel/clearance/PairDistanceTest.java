package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Measuring again after a move must answer as measuring from nothing does, and both as all features tried one by one
 * ({@link BruteForce}).
 */
class PairDistanceTest {
    private static final double SAME_MM = 1e-6;

    /** Once gone on from, the other from nothing. */
    private final PairDistance warm = new PairDistance();

    private final PairDistance cold = new PairDistance();

    private void assertSameAsFromNothing(Solid a, Solid b) {
        warm.measureAgain(a, b);
        cold.measure(a, b);
        String both = warm.lowerMm() + " to " + warm.upperMm() + ", from nothing " + cold.lowerMm() + " to "
                + cold.upperMm() + ": " + a + ", " + b;
        assertTrue(warm.lowerMm() <= warm.upperMm(), both);
        if (cold.upperMm() - cold.lowerMm() <= SAME_MM) {
            assertEquals(cold.upperMm(), warm.upperMm(), SAME_MM, both);
            assertEquals(cold.lowerMm(), warm.lowerMm(), SAME_MM, both);
        } else {
            // Round depths and rims close to contact leave the bounds open; then each holds the truth.
            assertTrue(warm.lowerMm() <= cold.upperMm() + SAME_MM && cold.lowerMm() <= warm.upperMm() + SAME_MM, both);
        }
    }

    /** A part wanders about, in and out of another: small steps and great ones, turns too; now and then it is replaced. */
    private void wanders(long seed, boolean round) {
        RandomSolids random = new RandomSolids(seed);
        BruteForce plain = new BruteForce();
        Solid fixed = random.lump().moved(random.anyTurn());
        Solid part = round ? pipe(random) : random.box();
        for (int step = 0; step < 60; step++) {
            double reach = Math.pow(10, random.between(-6, 2.5));
            Move turn = step % 3 == 0
                    ? Move.about(part.bounds().middle(), random.direction(), random.between(0, reach / 300))
                    : Move.identity();
            part = part.moved(turn.then(random.shift(reach)));
            if (part.bounds().gapTo(fixed.bounds()) > 400 || step % 20 == 19) {
                part = round ? pipe(random) : random.lump();
            }
            assertSameAsFromNothing(part, fixed);
            if (!round) {
                double there = plain.signedDistance((ConvexPolyhedron) part, (ConvexPolyhedron) fixed);
                assertEquals(there, warm.upperMm(), SAME_MM);
            }
        }
    }

    private static Solid pipe(RandomSolids random) {
        return RoundCylinder.of(random.place(100), random.place(300), random.between(5, 60))
                .rounded(random.between(0, 10));
    }

    @Property(tries = 300)
    void wanderingPolyhedra(@ForAll long seed) {
        wanders(seed, false);
    }

    @Property(tries = 100)
    void wanderingPipes(@ForAll long seed) {
        wanders(seed, true);
    }

    /** Quarter turns and steps along the sides make the corners that were nearest fall on one line or one place. */
    @Test
    void boxesThatTurnFlush() {
        Move tilt = Move.about(Vector3D.ZERO, Vector3D.of(1, 2, 3), 0.4);
        Solid fixed = Prism.box(0, 0, 0, 100, 100, 100).moved(tilt);
        Solid part = Prism.box(150, 0, 0, 250, 100, 100).moved(tilt);
        for (int step = 0; step < 400; step++) {
            Vector3D axis = tilt.applyDirection(
                    step % 3 == 0 ? Vector3D.Unit.PLUS_X : step % 3 == 1 ? Vector3D.Unit.PLUS_Y : Vector3D.Unit.PLUS_Z);
            Move turn = Move.about(tilt.apply(Vector3D.of(50, 50, 50)), axis, Math.PI / 2);
            Move along = Move.shift(axis.multiply(step % 7 == 0 ? 50 : 0));
            part = part.moved(step % 2 == 0 ? turn : along);
            assertSameAsFromNothing(part, fixed);
            if (step % 50 == 49) {
                part = Prism.box(150, 0, 0, 250, 100, 100).moved(tilt);
            }
        }
    }

    /** From deep inside to apart and back: the last corners of an overlap are of no use, nor is asking for witnesses. */
    @Test
    void inAndOut() {
        Solid fixed = Prism.box(0, 0, 0, 100, 100, 100).moved(Move.about(Vector3D.ZERO, Vector3D.Unit.PLUS_X, 1));
        for (int step = 1; step <= 40; step++) {
            double t = step % 2 == 0 ? step : 300 - step;
            Solid part = fixed.moved(Move.shift(t, 0, 0));
            assertSameAsFromNothing(part, fixed);
            assertEquals(t - 100, warm.upperMm(), 1e-9);
            assertEquals(-1, warm.direction(0), 1e-9);
        }
    }

    private static Solid anything(RandomSolids random) {
        double top = random.between(5, 300);
        return switch (random.random.nextInt(7)) {
            case 0 -> random.box().moved(random.anyTurn());
            case 1 -> random.lump().rounded(random.between(0, 30));
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
            case 5 -> Prism.of(Footprint.slot(Vector2D.of(0, 0), Vector2D.of(200, 0), 30), 0, top);
            default -> pipe(random);
        };
    }

    /** One workspace for pairs that have nothing to do with each other; its numbers are those of its gap. */
    @Property(tries = 100)
    void anyPairsInTurn(@ForAll long seed) {
        RandomSolids random = new RandomSolids(seed);
        for (int i = 0; i < 20; i++) {
            Solid a = anything(random).moved(random.shift(200));
            Solid b = anything(random).moved(random.yaw().then(random.shift(200)));
            assertSameAsFromNothing(a, b);
            Gap gap = warm.gap();
            assertEquals(0, gap.onA().distance(Vector3D.of(warm.onA(0), warm.onA(1), warm.onA(2))));
            assertEquals(0, gap.onB().distance(Vector3D.of(warm.onB(0), warm.onB(1), warm.onB(2))));
            assertEquals(
                    0, gap.direction().distance(Vector3D.of(warm.direction(0), warm.direction(1), warm.direction(2))));
            assertEquals(1, gap.direction().norm(), 1e-9);
            if (gap.lowerMm() > 0) {
                assertEquals(gap.upperMm(), gap.onA().distance(gap.onB()), SAME_MM);
            }
        }
    }

    @Test
    void misuseIsTold() {
        assertThrows(IllegalStateException.class, () -> new PairDistance().gap());
        assertThrows(IllegalStateException.class, () -> new PairDistance().onA(0));
        Solid box = Prism.box(0, 0, 0, 1, 1, 1);
        cold.measure(box, box);
        assertThrows(IllegalArgumentException.class, () -> cold.onB(3));
    }
}
