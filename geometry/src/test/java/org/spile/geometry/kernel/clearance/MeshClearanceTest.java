package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.SampleMeshes;
import org.spile.geometry.kernel.solid.Solid;

/** A mesh against the same body as a solid, against all triangle pairs, and against closed forms. */
class MeshClearanceTest {
    private static final Prism LEG = Prism.box(0, 0, 0, 90, 200, 120);
    private static final Prism FOOT = Prism.box(0, 0, 0, 300, 80, 120);
    private static final double[] CUBE = SampleMeshes.boxPoints(0, 0, 0, 100, 100, 100);

    private final MeshClearance clearance = new MeshClearance();

    private static Mesh cube() {
        return SampleMeshes.sound(CUBE, SampleMeshes.boxCorners());
    }

    private static Mesh openCube() {
        return SampleMeshes.sound(CUBE, Arrays.copyOf(SampleMeshes.boxCorners(), 30));
    }

    private static void assertBetween(double low, double high, double found, String what) {
        assertTrue(found >= low && found <= high, () -> what + ": " + found + " not in " + low + " to " + high);
    }

    private static Sufficiency judged(Gap gap) {
        return Sufficiency.of(gap, 0);
    }

    @Test
    void aBoxAsMeshAgreesWithTheBoxAsSolid() {
        RandomSolids random = new RandomSolids(31);
        Mesh cube = cube();
        int apart = 0;
        int deep = 0;
        for (int run = 0; run < 3000; run++) {
            ConvexPolyhedron other = (run % 3 == 0 ? random.lump() : random.box())
                    .moved(random.anyTurn())
                    .moved(random.shift(run % 2 == 0 ? 500 : 150));
            Move move = random.anyTurn().then(random.shift(5000));
            Gap truth = Clearance.between(Prism.box(0, 0, 0, 100, 100, 100), other);
            Gap found = clearance.between(cube.moved(move), other.moved(move));
            assertEquals(truth.upperMm(), found.upperMm(), 1e-6, "run " + run);
            assertEquals(truth.lowerMm(), found.lowerMm(), 1e-6, "run " + run);
            apart += truth.lowerMm() > 1e-6 ? 1 : 0;
            deep += truth.upperMm() < -1e-3 ? 1 : 0;
        }
        assertTrue(apart > 500 && deep > 500, apart + " apart, " + deep + " overlapping");
    }

    @Test
    void anEllAgreesWithAllTrianglePairs() {
        RandomSolids random = new RandomSolids(32);
        Mesh ell = SampleMeshes.ell();
        int apart = 0;
        int held = 0;
        for (int run = 0; run < 2500; run++) {
            ConvexPolyhedron other = (run % 2 == 0 ? small(random) : random.lump())
                    .moved(random.anyTurn())
                    .moved(random.shift(run % 3 == 0 ? 400 : 200));
            double plain = PlainTriangles.distance(PlainTriangles.of(ell), PlainTriangles.of(other));
            Gap found = clearance.between(ell, other);
            Vector3D centre = other.bounds().middle();
            boolean within = plain > 0 && (inEll(centre) || PlainTriangles.holds(other, ell.corner(0, 0)));
            if (plain > 0 && !within) {
                apart++;
                assertEquals(plain, found.upperMm(), 1e-6, "run " + run);
                assertEquals(plain, found.lowerMm(), 1e-6, "run " + run);
                assertEquals(plain, found.onA().distance(found.onB()), 1e-6);
                assertEquals(0, ell.surfaceMm(found.onA()), 1e-6);
            } else {
                held += within ? 1 : 0;
                assertHonest(ell, other, found, random);
            }
        }
        assertTrue(apart > 800 && held > 20, apart + " apart, " + held + " held");
    }

    private static ConvexPolyhedron small(RandomSolids random) {
        double x = random.between(5, 40);
        return ConvexPolyhedron.loft(
                List.of(Vector3D.ZERO, Vector3D.of(x, 0, 0), Vector3D.of(x, 20, 0)),
                List.of(Vector3D.of(0, 0, 30), Vector3D.of(x, 0, 30), Vector3D.of(x, 20, 30)));
    }

    private static boolean inEll(Vector3D p) {
        boolean low = p.getZ() >= 0 && p.getZ() <= 120 && p.getX() >= 0 && p.getY() >= 0;
        return low && ((p.getX() <= 90 && p.getY() <= 200) || (p.getX() <= 300 && p.getY() <= 80));
    }

    /** The way out named does end the overlap, and no shift tried that is shorter than the upper bound does. */
    private static void assertHonest(Mesh ell, ConvexPolyhedron other, Gap found, RandomSolids random) {
        assertTrue(found.upperMm() <= 0, () -> "overlap not seen: " + found);
        assertTrue(
                isFree(ell, other, found.direction().multiply(-found.lowerMm() + 1e-6)),
                () -> "not free after its way out: " + found);
        for (int i = 0; i < 6 && found.upperMm() < -1e-6; i++) {
            Vector3D shift = random.direction().multiply(-found.upperMm() * 0.999);
            assertFalse(isFree(ell, other, shift), () -> found + " but free after " + shift);
        }
    }

    private static boolean isFree(Mesh ell, ConvexPolyhedron other, Vector3D shift) {
        ConvexPolyhedron there = other.moved(Move.shift(shift));
        return PlainTriangles.distance(PlainTriangles.of(ell), PlainTriangles.of(there)) > 0
                && !inEll(there.bounds().middle())
                && !PlainTriangles.holds(there, ell.corner(0, 0));
    }

    @Test
    void anEllAgreesWithItsTwoBoxesForEveryKindOfSolid() {
        RandomSolids random = new RandomSolids(33);
        Mesh ell = SampleMeshes.ell();
        Body boxes = Body.of(LEG, FOOT);
        int apart = 0;
        int deep = 0;
        for (int run = 0; run < 3000; run++) {
            Solid other = solid(random, run % 6).moved(random.yaw()).moved(random.shift(run % 2 == 0 ? 400 : 200));
            Gap truth = Clearance.between(boxes, Body.of(other));
            Gap found = clearance.between(ell, other);
            String what = "run " + run + " " + other;
            if (truth.lowerMm() > 0) {
                apart++;
                double open = 1e-6 + truth.upperMm() - truth.lowerMm();
                assertEquals(truth.upperMm(), found.upperMm(), open, what);
                assertEquals(truth.lowerMm(), found.lowerMm(), 1e-6 + found.upperMm() - found.lowerMm(), what);
                assertTrue(found.upperMm() - found.lowerMm() <= 2e-5, what);
            } else if (truth.upperMm() < -1e-3) {
                deep++;
                assertTrue(found.upperMm() <= 0 && found.lowerMm() <= truth.upperMm() + 1e-6, what + found);
                assertEquals(Sufficiency.SHORT, judged(found), what + found);
            }
        }
        assertTrue(apart > 700 && deep > 300, apart + " apart, " + deep + " overlapping");
    }

    private static Solid solid(RandomSolids random, int kind) {
        Vector3D from = random.place(50);
        return switch (kind) {
            case 0 -> random.lump().rounded(random.between(0, 30));
            case 1 -> RoundCylinder.of(from, from.add(random.direction().multiply(200)), random.between(5, 60));
            case 2 ->
                RoundCylinder.of(from, from.add(random.direction().multiply(200)), 30)
                        .rounded(random.between(1, 20));
            case 3 -> ell(random.between(20, 200)).rounded(random.random.nextBoolean() ? 0 : 12);
            case 4 -> Prism.round(0, 0, random.between(5, 100), 0, 80).rounded(random.between(0, 10));
            default -> random.frustum().moved(random.anyTurn());
        };
    }

    private static Prism ell(double top) {
        return Prism.of(
                Outline.of(List.of(
                        Vector2D.of(0, 0),
                        Vector2D.of(300, 0),
                        Vector2D.of(300, 80),
                        Vector2D.of(90, 80),
                        Vector2D.of(90, 200),
                        Vector2D.of(0, 200))),
                0,
                top);
    }

    @Test
    void aSphereOfTrianglesIsNoNearerThanTheSphereAndNoFartherThanItsFacets() {
        RandomSolids random = new RandomSolids(34);
        Mesh sphere = SampleMeshes.icosphere(200, 3);
        // Edges of at most 200 · 0.166 after three cuts: facets stand back by 200 − √(200² − (e/√3)²) < 1.
        for (int run = 0; run < 300; run++) {
            Vector3D way = random.direction();
            double off = random.between(260, 600);
            Solid ball =
                    Prism.box(-0.01, -0.01, -0.01, 0.01, 0.01, 0.01).rounded(50).moved(Move.shift(way.multiply(off)));
            Gap gap = clearance.between(sphere, ball);
            assertBetween(off - 250.02, off - 249, gap.lowerMm(), "ball at " + off);
            assertEquals(gap.lowerMm(), gap.upperMm(), 1e-6);
            Mesh other = sphere.moved(Move.shift(way.multiply(off + 150)));
            Gap both = clearance.between(sphere, other);
            assertBetween(off - 250 - 1e-9, off - 248, both.lowerMm(), "sphere at " + (off + 150));
            assertEquals(both.lowerMm(), both.upperMm(), 1e-6);
            assertEquals(0, sphere.surfaceMm(both.onA()), 1e-6);
            assertEquals(0, other.surfaceMm(both.onB()), 1e-6);
        }
    }

    @Test
    void overlappingSpheresHaveTheirDepthBetweenTheBounds() {
        RandomSolids random = new RandomSolids(35);
        Mesh sphere = SampleMeshes.icosphere(200, 3);
        for (int run = 0; run < 100; run++) {
            Vector3D way = random.direction();
            double off = random.between(5, 395);
            Gap both = clearance.between(sphere, sphere.moved(Move.shift(way.multiply(off))));
            double depth = 400 - off;
            assertTrue(both.upperMm() < -1e-3, both::toString);
            assertBetween(-500, -depth + 2.1, both.lowerMm(), "lower bound at depth " + depth);
            assertTrue(both.upperMm() >= -depth - 1e-9, both::toString);
        }
    }

    @Test
    void whatIsHeldInsideOverlapsAClosedMeshAndIsUndecidedInAnOpenOne() {
        Prism held = Prism.box(40, 40, 40, 60, 60, 60);
        Gap within = clearance.between(cube(), held);
        assertEquals(-60, within.upperMm(), 1e-9);
        assertEquals(-60, within.lowerMm(), 1e-9);
        assertFalse(openCube().isClosed());
        Gap open = clearance.between(openCube(), held);
        assertEquals(Sufficiency.UNDECIDED, judged(open));
        assertEquals(40, open.upperMm(), 1e-9);
        assertEquals(-60, open.lowerMm(), 1e-9);
        assertEquals(40, clearance.toSurface(openCube(), held).lowerMm(), 1e-9);
        // A thing that looks out of the open cube's bounds isn't held by it, and what cuts its skin overlaps for sure.
        // Before its open side: from (−40, 60, 50) to the rim at (0, 100, 50).
        Gap before = clearance.between(openCube(), Prism.box(-80, 40, 40, -40, 60, 60));
        assertEquals(Math.hypot(40, 40), before.lowerMm(), 1e-9);
        assertEquals(Sufficiency.SHORT, judged(clearance.between(openCube(), Prism.box(40, 40, -20, 60, 60, 20))));
        Mesh small = SampleMeshes.box(40, 40, 40, 60, 60, 60);
        assertEquals(-60, clearance.between(cube(), small).upperMm(), 1e-9);
        assertEquals(Sufficiency.UNDECIDED, judged(clearance.between(openCube(), small)));
        assertEquals(Sufficiency.UNDECIDED, judged(clearance.between(small, openCube())));
    }

    @Test
    void spheresWithinSpheres() {
        Mesh big = SampleMeshes.icosphere(200, 2);
        Mesh small = SampleMeshes.icosphere(50, 2).moved(Move.shift(20, 0, 0));
        for (Gap gap : List.of(
                clearance.between(big, small), clearance.between(small, big).swapped())) {
            // Out through the nearest side takes 200 + 50 − 20 at most, less what the facets stand back.
            assertBetween(-231, -70, gap.upperMm(), "upper");
            assertBetween(-231, -225, gap.lowerMm(), "lower");
        }
        Solid ball = Prism.box(-1, -1, -1, 1, 1, 1).rounded(10);
        Gap held = clearance.between(big, ball);
        assertBetween(-211, -200, held.upperMm(), "from the middle to the skin, and the rounding");
    }

    @Test
    void touchingIsNotOverlap() {
        Mesh ell = SampleMeshes.ell();
        for (Solid flush : List.of(
                Prism.box(90, 80, 0, 200, 200, 120),
                Prism.box(90, 80, 30, 140, 130, 60),
                Prism.box(0, 0, 120, 300, 200, 150),
                Prism.box(300, 0, 0, 310, 80, 120),
                ell(50).moved(Move.shift(0, 0, 120)),
                RoundCylinder.of(Vector3D.of(50, 50, 150), Vector3D.of(250, 50, 150), 30))) {
            Gap gap = clearance.between(ell, flush);
            assertEquals(Sufficiency.CLEAR, judged(gap), gap + " to " + flush);
            assertEquals(0, gap.upperMm(), 1e-6);
            assertEquals(Sufficiency.SHORT, Sufficiency.of(gap, 0.01));
        }
        // A slot of exactly the needed width.
        Mesh channel = SampleMeshes.channel();
        assertTrue(channel.isClosed(), () -> channel.flaws().toString());
        Move turn = Move.about(Vector3D.of(1, 2, 3), Vector3D.of(3, 1, 2), 0.9).then(Move.shift(4000, 3000, 1000));
        Gap tight = clearance.between(
                channel.moved(turn),
                ConvexPolyhedron.loft(
                                List.of(Vector3D.of(40, 30, 10), Vector3D.of(160, 30, 10), Vector3D.of(160, 90, 10)),
                                List.of(Vector3D.of(40, 30, 40), Vector3D.of(160, 30, 40), Vector3D.of(160, 90, 40)))
                        .moved(turn));
        assertEquals(Sufficiency.CLEAR, judged(tight), tight::toString);
        // The same body overlaps itself by all of its depth, whichever form it has.
        assertEquals(-80, clearance.between(ell, Body.of(LEG, FOOT)).upperMm(), 41);
        assertEquals(Sufficiency.SHORT, judged(clearance.between(ell, Body.of(LEG, FOOT))));
        assertEquals(Sufficiency.SHORT, judged(clearance.between(ell, ell)));
    }

    @Test
    void meshesThatTouch() {
        Mesh ell = SampleMeshes.ell();
        for (Move move : List.of(Move.shift(0, 0, 120), Move.shift(300, 0, 0), Move.shift(0, 200, 0))) {
            Gap gap = clearance.between(ell, ell.moved(move));
            assertEquals(Sufficiency.CLEAR, judged(gap), () -> move + ": " + gap);
        }
        assertEquals(Sufficiency.SHORT, judged(clearance.between(ell, ell.moved(Move.shift(0, 0, 119.9)))));
        // A smaller L flush within the larger one, floor on floor.
        Mesh inner = SampleMeshes.ell(10, 10, 290, 190, 80, 70, 60);
        assertEquals(Sufficiency.SHORT, judged(clearance.between(ell, inner)));
        // Two L's that fill each other's corner touch on two sides at once: not known, and so it is told.
        Mesh turned = ell.moved(Move.about(Vector3D.ZERO, Vector3D.Unit.PLUS_Z, Math.PI))
                .moved(Move.shift(390, 280, 0));
        Gap corner = clearance.between(ell, turned);
        assertEquals(0, corner.upperMm(), 1e-6);
        assertFalse(judged(corner) == Sufficiency.SHORT, corner::toString);
    }

    @Test
    void aSheetInTheSeamOfAnEllIsUndecidedAndABodyThereIsNot() {
        Prism ell = ell(120);
        // It is cut in two along the line from (0, 0) to its inner corner (90, 80).
        Mesh sheet = SampleMeshes.sound(new double[] {18, 16, 10, 72, 64, 10, 72, 64, 100}, 0, 1, 2);
        assertEquals(Sufficiency.UNDECIDED, judged(clearance.toSurface(sheet, ell)));
        assertEquals(Sufficiency.UNDECIDED, judged(clearance.between(sheet, ell)));
        Mesh body = SampleMeshes.prism(new double[] {18, 16, 72, 64, 40, 70}, new int[] {0, 1, 2}, 10, 100);
        assertEquals(Sufficiency.SHORT, judged(clearance.between(body, ell)));
        Mesh channel = SampleMeshes.channel().moved(Move.shift(-200, -20, 35));
        Mesh around =
                channel.moved(Move.turn(Math.atan2(80, 90), Vector3D.ZERO)).moved(Move.shift(18, 16, 0));
        assertEquals(Sufficiency.SHORT, judged(clearance.between(around, ell)));
        // A sheet flush on the outer side, across the seam, is parted from both by its own plane.
        Mesh outside = SampleMeshes.sound(new double[] {-10, 0, 10, 250, 0, 10, 250, 0, 100}, 0, 1, 2);
        assertEquals(Sufficiency.CLEAR, judged(clearance.toSurface(outside, ell)));
    }

    @Test
    void bodiesAreMeasuredSolidBySolid() {
        Mesh ell = SampleMeshes.ell();
        Body pair = Body.of(Prism.box(400, 0, 0, 410, 10, 10), Prism.box(40, 40, 170, 50, 50, 180));
        Gap gap = clearance.between(ell, pair);
        assertEquals(50, gap.lowerMm(), 1e-9);
        assertEquals(50, gap.upperMm(), 1e-9);
        assertEquals(1, gap.pieceB());
        // The triangle named is one of the top.
        for (int k = 0; k < 3; k++) {
            assertEquals(120, ell.corner(gap.pieceA(), k).getZ());
        }
    }
}
