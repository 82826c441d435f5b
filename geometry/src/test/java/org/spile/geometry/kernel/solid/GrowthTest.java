package org.spile.geometry.kernel.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.clearance.Clearance;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.Outline;

/** The two growths of solids: closed forms, and volumes by the half spaces of Apache Commons Geometry. */
class GrowthTest {
    private static final Solid CUBE = Prism.box(0, 0, 0, 100, 100, 100);
    private static final Solid CORNER = Prism.box(160, 180, 0, 300, 300, 100);

    private static Solid general(Solid solid) {
        Move there = Move.about(Vector3D.ZERO, Vector3D.Unit.PLUS_X, 1);
        return solid.moved(there).moved(there.inverse());
    }

    /** A corner 60 by 80 away, less 30: from 100 to 70 by distance, to hypot(30, 50) with square corners. */
    @Test
    void cornersTellTheTwoApart() {
        for (Solid corner : List.of(CORNER, general(CORNER))) {
            assertEquals(100, Clearance.between(CUBE, corner).upperMm(), 1e-9);
            assertEquals(70, Clearance.between(CUBE, corner.rounded(30)).upperMm(), 1e-9);
            assertEquals(
                    Math.hypot(30, 50),
                    Clearance.between(CUBE, corner.grownSquare(30)).upperMm(),
                    1e-9);
            Body body = Body.of(corner);
            assertEquals(70, Clearance.between(Body.of(CUBE), body.rounded(30)).upperMm(), 1e-9);
            assertEquals(
                    58.309518948453,
                    Clearance.between(Body.of(CUBE), body.grownSquare(30)).upperMm(),
                    1e-9);
        }
    }

    @Test
    void upright_facesMoveOutAndHolesClose() {
        Outline angle = Outline.of(List.of(
                Vector2D.of(0, 0),
                Vector2D.of(300, 0),
                Vector2D.of(300, 100),
                Vector2D.of(100, 100),
                Vector2D.of(100, 250),
                Vector2D.of(0, 250)));
        Prism grown = Prism.of(angle, 20, 50).grownSquare(10);
        assertEquals(10, grown.bottomMm());
        assertEquals(60, grown.topMm());
        // 320 x 120 and 120 x 150 above it.
        assertEquals(
                320 * 120 + 120 * 150, grown.footprint().outline().orElseThrow().areaMm2(), 1e-6);
        Outline frame = Outline.rectangle(0, 0, 400, 400)
                .withHoles(List.of(List.of(
                        Vector2D.of(100, 100), Vector2D.of(300, 100), Vector2D.of(300, 300), Vector2D.of(100, 300))));
        Footprint narrower = Footprint.of(frame).grownSquare(60);
        assertEquals(520 * 520 - 80 * 80, narrower.outline().orElseThrow().areaMm2(), 1e-6);
        Footprint closed = Footprint.of(frame).grownSquare(101);
        assertEquals(602 * 602, closed.outline().orElseThrow().areaMm2(), 1e-6);
    }

    /** At any yaw the sides of a rectangle move out by the growth to the last digits, not to those of a grid. */
    @Test
    void upright_isExactAtOddYaws() {
        for (double yaw : new double[] {0.1, 0.7, 1.234, 2.5}) {
            Move turn = Move.turn(yaw, Vector3D.of(3000, -2000, 0));
            Solid wall = Prism.box(131, -50, 0, 140, 150, 100).moved(turn);
            Solid grown = CUBE.moved(turn).grownSquare(31);
            assertEquals(0, Clearance.between(grown, wall).upperMm(), 1e-9);
        }
    }

    @Test
    void roundThings_stayRound() {
        Solid pipe = RoundCylinder.of(Vector3D.of(0, 0, 0), Vector3D.of(200, 0, 0), 50)
                .grownSquare(20);
        assertEquals(new Box3(-20, -70, -70, 220, 70, 70), pipe.bounds());
        Solid beyondItsEnd = Prism.box(230, 60, -5, 300, 90, 5);
        assertEquals(10, Clearance.between(pipe, beyondItsEnd).upperMm(), 1e-9);
        Solid oval = RoundCylinder.flatOval(Vector3D.ZERO, Vector3D.of(0, 0, 100), Vector3D.of(75, 0, 0), 25)
                .grownSquare(5);
        assertEquals(new Box3(-105, -30, -5, 105, 30, 105), oval.bounds());
        Prism disc = Prism.round(0, 0, 40, 0, 10).grownSquare(5);
        assertEquals(45, disc.footprint().radiusMm(), 1e-12);
        assertEquals(3, CUBE.rounded(3).grownSquare(5).roundMm(), 1e-12);
        assertEquals(3, general(CUBE).rounded(3).grownSquare(5).roundMm(), 1e-12);
    }

    /** A pyramid on a rectangle: its four slopes, moved out, no longer meet in a point but in a ridge. */
    @Test
    void apexOfFourFaces_splits() {
        ConvexPolyhedron pyramid = ConvexPolyhedron.hull(List.of(
                Vector3D.of(-200, -100, 0),
                Vector3D.of(200, -100, 0),
                Vector3D.of(200, 100, 0),
                Vector3D.of(-200, 100, 0),
                Vector3D.of(0, 0, 150)));
        ConvexPolyhedron grown = pyramid.grownSquare(10);
        assertEquals(5, grown.faces().size());
        assertEquals(6, grown.vertices().size());
        // A slope of run r and rise 150 moves up by 10 hypot(r, 150) / r: the end ones (r = 200) by 12.5, the sides by
        // 18.03.
        assertEquals(150 + 12.5, grown.bounds().maxZ(), 1e-9);
        assertVolume(pyramid, grown, 10);
    }

    private static void assertVolume(ConvexPolyhedron before, ConvexPolyhedron grown, double growthMm) {
        Precision.DoubleEquivalence precision = Precision.doubleEquivalenceOfEpsilon(1e-9);
        List<Plane> planes = new ArrayList<>();
        for (int face = 0; face < before.faces().size(); face++) {
            Vector3D normal = before.normal(face);
            Vector3D on = before.vertices().get(before.faces().get(face).get(0)).add(normal.multiply(growthMm));
            planes.add(Planes.fromPointAndNormal(on, normal, precision));
        }
        double expected = ConvexVolume.fromBounds(planes).getSize();
        assertEquals(expected, grown.volumeMm3(), 1e-6 * expected);
    }

    static void everyFaceMovesOutByTheGrowth(ConvexPolyhedron solid, double growthMm, Random random) {
        ConvexPolyhedron grown;
        try {
            grown = solid.grownSquare(growthMm);
        } catch (IllegalArgumentException sharp) {
            assertTrue(sharp.getMessage().contains("too sharp"), sharp.getMessage());
            return;
        }
        ConvexCore before = solid.cores().get(0);
        ConvexCore after = grown.cores().get(0);
        for (int face = 0; face < solid.faces().size(); face++) {
            Vector3D n = solid.normal(face);
            double moved = after.reach(n.getX(), n.getY(), n.getZ()) - before.reach(n.getX(), n.getY(), n.getZ());
            assertEquals(growthMm, moved, 3e-6);
        }
        for (int i = 0; i < 50; i++) {
            Vector3D n = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                    .normalize();
            double moved = after.reach(n.getX(), n.getY(), n.getZ()) - before.reach(n.getX(), n.getY(), n.getZ());
            assertTrue(moved >= growthMm - 3e-6, "less than by distance: " + moved + " of " + growthMm);
        }
        assertVolume(solid, grown, growthMm);
    }

    @Property(tries = 150)
    void growsEveryWay(@ForAll long seed) {
        Random random = new Random(seed);
        List<Vector3D> points = new ArrayList<>();
        int count = 4 + random.nextInt(9);
        for (int i = 0; i < count; i++) {
            points.add(
                    Vector3D.of(200 * random.nextGaussian(), 200 * random.nextGaussian(), 200 * random.nextGaussian()));
        }
        everyFaceMovesOutByTheGrowth(ConvexPolyhedron.hull(points), Math.pow(10, -1 + 3 * random.nextDouble()), random);
    }

    @Test
    void sharpCorners_areRefused() {
        Outline sliver = Outline.of(List.of(Vector2D.of(0, 0), Vector2D.of(1000, 0), Vector2D.of(1000, 80)));
        Solid upright = Prism.of(sliver, 0, 50);
        assertRefused("sharper than 10", () -> upright.grownSquare(5));
        assertRefused("too sharp", () -> general(upright).grownSquare(5));
        assertEquals(5, upright.rounded(5).roundMm(), 1e-12);
        assertRefused("negative", () -> CUBE.grownSquare(-1));
        assertRefused("negative", () -> general(CUBE).grownSquare(-1));
        assertRefused(
                "negative",
                () -> RoundCylinder.of(Vector3D.ZERO, Vector3D.Unit.PLUS_X, 1).grownSquare(-1));
        assertEquals(CUBE.bounds(), CUBE.grownSquare(0).bounds());
    }

    private static void assertRefused(String words, Runnable growth) {
        String told = assertThrows(IllegalArgumentException.class, growth::run).getMessage();
        assertTrue(told.contains(words), told);
    }
}
