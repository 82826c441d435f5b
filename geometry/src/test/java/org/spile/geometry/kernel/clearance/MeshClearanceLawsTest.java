package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.SampleMeshes;
import org.spile.geometry.kernel.solid.Solid;

/** Laws that hold for any meshes. Each law is a method of its own, so that any runner can drive it. */
class MeshClearanceLawsTest {
    private static final Mesh[] SAMPLES = {
        SampleMeshes.ell(),
        SampleMeshes.channel(),
        SampleMeshes.box(0, 0, 0, 120, 60, 200),
        SampleMeshes.icosphere(90, 2),
        SampleMeshes.sound(SampleMeshes.boxPoints(0, 0, 0, 100, 100, 100), 0, 2, 1, 0, 3, 2, 0, 1, 5, 0, 5, 4)
    };

    /** Two meshes, a solid, and a motion, all from one number. */
    private record Case(Mesh a, Mesh b, Solid solid, Vector3D way, double shiftMm, double turnRad) {
        static Case of(long seed) {
            RandomSolids random = new RandomSolids(seed);
            Mesh a = SAMPLES[random.random.nextInt(SAMPLES.length)].moved(random.anyTurn());
            Mesh b = SAMPLES[random.random.nextInt(SAMPLES.length)].moved(random.anyTurn());
            double reach = random.random.nextBoolean() ? 400 : 150;
            Vector3D from = random.place(50);
            Solid solid = switch (random.random.nextInt(3)) {
                case 0 -> random.lump().rounded(random.between(0, 20));
                case 1 -> RoundCylinder.of(from, from.add(random.direction().multiply(150)), random.between(5, 60));
                default -> Prism.box(0, 0, 0, 50, random.between(5, 200), 80);
            };
            return new Case(
                    a,
                    b.moved(random.shift(reach)),
                    solid.moved(random.shift(reach)),
                    random.direction(),
                    random.between(0, 300),
                    random.between(0, 6));
        }

        Gap meshes() {
            return new MeshClearance().between(a, b);
        }

        Gap meshAndSolid() {
            return new MeshClearance().between(a, solid);
        }
    }

    /** Whether an open mesh might hold a thing is judged by its bounds, which a turn may change; then bounds must meet. */
    private static void assertSame(Gap first, Gap second, double slackMm, boolean closed) {
        assertTrue(
                first.lowerMm() <= second.upperMm() + slackMm && second.lowerMm() <= first.upperMm() + slackMm,
                () -> first + " against " + second);
        if (first.lowerMm() > 0 && (closed || second.lowerMm() > 0)) {
            assertEquals(first.upperMm(), second.upperMm(), slackMm);
            assertEquals(first.lowerMm(), second.lowerMm(), slackMm);
        }
        assertEquals(first.upperMm() < 0, second.upperMm() < 0, () -> first + " against " + second);
    }

    static void swappingTheTwoKeepsTheDistance(Case c) {
        assertSame(c.meshes(), new MeshClearance().between(c.b, c.a).swapped(), 1e-7, true);
    }

    static void movingBothTogetherKeepsTheDistance(Case c) {
        Move move = Move.about(Vector3D.of(100, 200, 300), c.way, c.turnRad).then(Move.shift(10_000, 5_000, 3_000));
        boolean closed = c.a.isClosed() && c.b.isClosed();
        assertSame(c.meshes(), new MeshClearance().between(c.a.moved(move), c.b.moved(move)), 1e-6, closed);
        // A rim against an edge close to contact has bounds open by up to 2e-5, either way.
        assertSame(c.meshAndSolid(), new MeshClearance().between(c.a.moved(move), c.solid.moved(move)), 2e-5, closed);
    }

    static void apartTheBoundsMeetAndTheWitnessesLieOnBoth(Case c) {
        Gap gap = c.meshes();
        if (gap.lowerMm() > 0) {
            assertTrue(gap.upperMm() - gap.lowerMm() <= 1e-7, gap::toString);
            assertEquals(gap.upperMm(), gap.onA().distance(gap.onB()), 1e-7);
            assertEquals(0, c.a.surfaceMm(gap.onA()), 1e-7);
            assertEquals(0, c.b.surfaceMm(gap.onB()), 1e-7);
            double along = gap.onB().subtract(gap.onA()).dot(gap.direction());
            assertEquals(gap.upperMm(), along, 1e-6);
        }
    }

    static void roundingTakesItsRadiusOff(Case c) {
        Gap sharp = c.meshAndSolid();
        Gap round = new MeshClearance().between(c.a, c.solid.rounded(c.shiftMm / 10));
        assertTrue(round.upperMm() <= sharp.upperMm() + 1e-8, () -> sharp + " rounded " + round);
        if (round.lowerMm() > 0) {
            assertEquals(sharp.upperMm() - c.shiftMm / 10, round.upperMm(), 1e-6);
        }
    }

    static void whatMeetsAMarginMeetsEverySmallerOne(Case c) {
        Gap gap = c.meshAndSolid();
        Sufficiency wide = Sufficiency.of(gap, c.shiftMm);
        Sufficiency narrow = Sufficiency.of(gap, c.shiftMm / 2);
        assertTrue(wide != Sufficiency.CLEAR || narrow == Sufficiency.CLEAR);
        // A margin asked for as growth of the solid is the same demand.
        Gap grown = new MeshClearance().between(c.a, c.solid.rounded(c.shiftMm));
        if (wide == Sufficiency.CLEAR) {
            assertTrue(Sufficiency.of(grown, 0) == Sufficiency.CLEAR, () -> gap + " grown " + grown);
        } else if (wide == Sufficiency.SHORT && gap.upperMm() < c.shiftMm - 1e-4) {
            assertTrue(Sufficiency.of(grown, 0) != Sufficiency.CLEAR, () -> gap + " grown " + grown);
        }
    }

    static void aShiftChangesTheDistanceByNoMoreThanItself(Case c) {
        Gap before = c.meshes();
        Gap after = new MeshClearance().between(c.a, c.b.moved(Move.shift(c.way.multiply(c.shiftMm))));
        assertTrue(after.lowerMm() <= before.upperMm() + c.shiftMm + 1e-7, () -> before + " then " + after);
        assertTrue(after.upperMm() >= before.lowerMm() - c.shiftMm - 1e-7, () -> before + " then " + after);
    }

    /** What overlaps for sure is free after the shift that the lower bound names, if both bound a space. */
    static void theWayOutNamedIsOne(Case c) {
        Gap gap = c.meshes();
        if (gap.upperMm() < -GeometryTolerance.CONTACT_MM && c.a.isClosed() && c.b.isClosed()) {
            Vector3D out = gap.direction().multiply(1e-5 - gap.lowerMm());
            Gap after = new MeshClearance().between(c.a, c.b.moved(Move.shift(out)));
            assertTrue(after.lowerMm() > 0, () -> gap + " then " + after);
        }
        Gap solid = c.meshAndSolid();
        if (solid.upperMm() < -GeometryTolerance.CONTACT_MM && c.a.isClosed()) {
            Vector3D out = solid.direction().multiply(1e-4 - solid.lowerMm());
            Gap after = new MeshClearance().between(c.a, Body.of(c.solid.moved(Move.shift(out))));
            assertTrue(after.lowerMm() > 0, () -> solid + " then " + after);
        }
    }

    @Property(tries = 150)
    void symmetric(@ForAll long seed) {
        swappingTheTwoKeepsTheDistance(Case.of(seed));
    }

    @Property(tries = 150)
    void unmovedByCommonMoves(@ForAll long seed) {
        movingBothTogetherKeepsTheDistance(Case.of(seed));
    }

    @Property(tries = 150)
    void certified(@ForAll long seed) {
        apartTheBoundsMeetAndTheWitnessesLieOnBoth(Case.of(seed));
    }

    @Property(tries = 150)
    void rounding(@ForAll long seed) {
        roundingTakesItsRadiusOff(Case.of(seed));
    }

    @Property(tries = 150)
    void monotoneInMargin(@ForAll long seed) {
        whatMeetsAMarginMeetsEverySmallerOne(Case.of(seed));
    }

    @Property(tries = 150)
    void boundedByTheShift(@ForAll long seed) {
        aShiftChangesTheDistanceByNoMoreThanItself(Case.of(seed));
    }

    @Property(tries = 150)
    void wayOut(@ForAll long seed) {
        theWayOutNamedIsOne(Case.of(seed));
    }
}
