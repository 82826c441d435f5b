package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/**
 * The certified distance against all feature pairs, 100,000 random pairs of each kind, within 1e-6 mm. The kinds are
 * those at which a distance search goes wrong: any rotation, yaw alone, near contact, overlap, nearly parallel faces.
 */
class DistanceAgainstBruteForceTest {
    private static final int PAIRS = Integer.getInteger("spile.pairs", 100_000);
    private static final int CHUNK = 5_000;

    /** Places a pair; the brute force is there to bring pairs near each other. */
    @FunctionalInterface
    private interface Placing {
        ConvexPolyhedron[] place(RandomSolids random, ConvexPolyhedron[] pair, BruteForce brute);
    }

    private static void check(long seed, Placing placing) {
        int chunks = (PAIRS + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().forEach(chunk -> checkChunk(1_000 * seed + chunk, placing));
    }

    private static void checkChunk(long seed, Placing placing) {
        RandomSolids random = new RandomSolids(seed);
        List<ConvexPolyhedron> stock = random.stock(60);
        BruteForce brute = new BruteForce();
        PairDistance pair = new PairDistance();
        for (int run = 0; run < Math.min(CHUNK, PAIRS); run++) {
            ConvexPolyhedron[] placed =
                    placing.place(random, new ConvexPolyhedron[] {random.of(stock), random.of(stock)}, brute);
            double expected = brute.signedDistance(placed[0], placed[1]);
            pair.measure(placed[0], placed[1]);
            if (!agrees(expected, pair)) {
                fail("pair " + run + " of seed " + seed + ": expected " + expected + ", found " + pair.lowerMm()
                        + " to " + pair.upperMm());
            }
        }
    }

    private static boolean agrees(double expected, PairDistance pair) {
        return Math.abs(expected - pair.upperMm()) <= 1e-6
                && Math.abs(expected - pair.lowerMm()) <= 1e-6
                && pair.lowerMm() <= expected + 1e-9
                && pair.upperMm() >= expected - 1e-9;
    }

    private static ConvexPolyhedron[] moved(ConvexPolyhedron[] pair, Move first, Move second) {
        return new ConvexPolyhedron[] {pair[0].moved(first), pair[1].moved(second)};
    }

    @Test
    void anyRotation() {
        check(
                1,
                (r, p, brute) -> moved(
                        p,
                        r.anyTurn(),
                        r.anyTurn()
                                .then(r.shift(600))
                                .then(Move.shift(5000, 3000, 1000))
                                .then(Move.shift(-5000, -3000, -1000))));
    }

    @Test
    void yawOnly() {
        check(2, (r, p, brute) -> moved(p, r.yaw(), r.yaw().then(r.shift(500))));
    }

    @Test
    void nearTouching() {
        check(3, (r, p, brute) -> {
            ConvexPolyhedron[] apart = moved(
                    p, r.anyTurn(), r.anyTurn().then(Move.shift(r.direction().multiply(1500))));
            Vector3D between = brute.between(apart[0], apart[1]);
            double gap = Math.pow(10, r.between(-8, 1));
            Vector3D back = between.multiply(gap / between.norm() - 1);
            return moved(apart, Move.identity(), Move.shift(back));
        });
    }

    @Test
    void forcedOverlap() {
        check(4, (r, p, brute) -> moved(p, r.anyTurn(), r.anyTurn().then(r.shift(60))));
    }

    @Test
    void facesNearlyParallel() {
        check(5, (r, p, brute) -> {
            Move common = r.anyTurn();
            Move tilt = Move.about(Vector3D.ZERO, r.direction(), Math.pow(10, r.between(-12, -3)));
            double gap = r.random.nextBoolean() ? Math.pow(10, r.between(-8, 1)) : r.between(-50, 300);
            Vector3D beside = Vector3D.of(r.between(-300, 300), r.between(-300, 300), 400 + gap);
            return moved(p, common, tilt.then(Move.shift(beside)).then(common));
        });
    }
}
