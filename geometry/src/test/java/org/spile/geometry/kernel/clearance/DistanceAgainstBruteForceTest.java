package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/** The certified distance against all feature pairs, many random pairs of each kind, within 1e-6 mm. */
class DistanceAgainstBruteForceTest {
    private static final int PAIRS = Integer.getInteger("spile.pairs", 20_000);

    private final PairDistance pair = new PairDistance();

    private void check(long seed, BiFunction<RandomSolids, ConvexPolyhedron[], ConvexPolyhedron[]> place) {
        RandomSolids random = new RandomSolids(seed);
        List<ConvexPolyhedron> stock = random.stock(60);
        for (int run = 0; run < PAIRS; run++) {
            ConvexPolyhedron[] placed =
                    place.apply(random, new ConvexPolyhedron[] {random.of(stock), random.of(stock)});
            double expected = BruteForce.signedDistance(placed[0], placed[1]);
            pair.measure(placed[0], placed[1]);
            String seen = "pair " + run + " of seed " + seed;
            assertEquals(expected, pair.upperMm(), 1e-6, seen);
            assertEquals(expected, pair.lowerMm(), 1e-6, seen);
            assertTrue(pair.lowerMm() <= expected + 1e-9, seen);
            assertTrue(pair.upperMm() >= expected - 1e-9, seen);
        }
    }

    private static ConvexPolyhedron[] moved(ConvexPolyhedron[] pair, Move first, Move second) {
        return new ConvexPolyhedron[] {pair[0].moved(first), pair[1].moved(second)};
    }

    @Test
    void anyRotation() {
        check(
                1,
                (r, p) -> moved(
                        p,
                        r.anyTurn(),
                        r.anyTurn()
                                .then(r.shift(600))
                                .then(Move.shift(5000, 3000, 1000))
                                .then(Move.shift(-5000, -3000, -1000))));
    }

    @Test
    void yawOnly() {
        check(2, (r, p) -> moved(p, r.yaw(), r.yaw().then(r.shift(500))));
    }

    @Test
    void nearTouching() {
        check(3, (r, p) -> {
            ConvexPolyhedron[] apart = moved(
                    p, r.anyTurn(), r.anyTurn().then(Move.shift(r.direction().multiply(1500))));
            Vector3D between = BruteForce.between(apart[0], apart[1]);
            double gap = Math.pow(10, r.between(-8, 1));
            Vector3D back = between.multiply(gap / between.norm() - 1);
            return moved(apart, Move.identity(), Move.shift(back));
        });
    }

    @Test
    void forcedOverlap() {
        check(4, (r, p) -> moved(p, r.anyTurn(), r.anyTurn().then(r.shift(60))));
    }

    @Test
    void facesNearlyParallel() {
        check(5, (r, p) -> {
            Move common = r.anyTurn();
            Move tilt = Move.about(Vector3D.ZERO, r.direction(), Math.pow(10, r.between(-12, -3)));
            double gap = r.random.nextBoolean() ? Math.pow(10, r.between(-8, 1)) : r.between(-50, 300);
            Vector3D beside = Vector3D.of(r.between(-300, 300), r.between(-300, 300), 400 + gap);
            return moved(p, common, tilt.then(Move.shift(beside)).then(common));
        });
    }
}
