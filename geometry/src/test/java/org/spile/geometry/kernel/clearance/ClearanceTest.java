package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** Worked examples; the values are closed forms, written out where they are not plain differences. */
class ClearanceTest {
    private static final Solid CUBE = Prism.box(0, 0, 0, 100, 100, 100);

    private static Gap gap(Solid a, Solid b) {
        Gap gap = Clearance.between(a, b);
        assertEquals(gap.lowerMm(), gap.upperMm(), 1e-9, "bounds");
        assertEquals(gap.upperMm(), gap.onB().subtract(gap.onA()).dot(gap.direction()), 1e-6, "witnesses");
        assertEquals(1, gap.direction().norm(), 1e-12, "unit direction");
        Gap other = Clearance.between(b, a);
        assertEquals(gap.upperMm(), other.upperMm(), 1e-9, "symmetry");
        return gap;
    }

    /** The same solid as a polyhedron, so that the general way is taken. */
    private static Solid general(Solid solid) {
        Move there = Move.about(Vector3D.ZERO, Vector3D.Unit.PLUS_X, 1);
        return solid.moved(there).moved(there.inverse());
    }

    private static void assertPoint(double x, double y, double z, Vector3D point) {
        assertEquals(0, point.distance(Vector3D.of(x, y, z)), 1e-6, () -> "at " + point);
    }

    @Test
    void faceToFace() {
        Solid beside = Prism.box(130, 20, 20, 150, 80, 60);
        assertEquals(30, gap(CUBE, beside).upperMm(), 1e-12);
        assertEquals(30, gap(general(CUBE), beside).upperMm(), 1e-9);
        assertPoint(100, gap(CUBE, beside).onB().getY(), 40, gap(CUBE, beside).onA());
    }

    @Test
    void edgeToEdgeAndCornerToCorner() {
        assertEquals(50, gap(CUBE, Prism.box(130, 140, 0, 200, 200, 100)).upperMm(), 1e-12);
        double diagonal = Math.sqrt(30 * 30 + 40 * 40 + 120 * 120);
        Gap corner = gap(CUBE, Prism.box(130, 140, 220, 200, 200, 300));
        assertEquals(diagonal, corner.upperMm(), 1e-12);
        assertPoint(100, 100, 100, corner.onA());
        assertPoint(130, 140, 220, corner.onB());
        assertEquals(
                diagonal,
                gap(general(CUBE), Prism.box(130, 140, 220, 200, 200, 300)).upperMm(),
                1e-9);
    }

    @Test
    void crossingEdges() {
        // A ridge along x at height 0 and one along y at height 10, square to each other.
        Solid lower = ConvexPolyhedron.hull(List.of(
                Vector3D.of(-90, 0, 0), Vector3D.of(90, 0, 0),
                Vector3D.of(-90, -30, -40), Vector3D.of(90, -30, -40),
                Vector3D.of(-90, 30, -40), Vector3D.of(90, 30, -40)));
        Solid upper = ConvexPolyhedron.hull(List.of(
                Vector3D.of(0, -90, 10), Vector3D.of(0, 90, 10),
                Vector3D.of(-30, -90, 50), Vector3D.of(-30, 90, 50),
                Vector3D.of(30, -90, 50), Vector3D.of(30, 90, 50)));
        Gap gap = gap(lower, upper);
        assertEquals(10, gap.upperMm(), 1e-9);
        assertPoint(0, 0, 0, gap.onA());
        assertPoint(0, 0, 10, gap.onB());
        assertEquals(-5, gap(lower, upper.moved(Move.shift(0, 0, -15))).upperMm(), 1e-9);
    }

    @Test
    void aPartInsideAChannel() {
        Solid channel = Prism.of(
                Outline.of(List.of(
                        Vector2D.of(0, 0),
                        Vector2D.of(500, 0),
                        Vector2D.of(500, 300),
                        Vector2D.of(460, 300),
                        Vector2D.of(460, 40),
                        Vector2D.of(40, 40),
                        Vector2D.of(40, 300),
                        Vector2D.of(0, 300))),
                0,
                250);
        assertEquals(7, gap(channel, Prism.box(47, 60, 10, 440, 280, 200)).upperMm(), 1e-12);
        assertEquals(-3, gap(channel, Prism.box(37, 60, 10, 440, 280, 200)).upperMm(), 1e-9);
        assertEquals(
                Math.hypot(20, 20),
                gap(channel, Prism.box(60, 60, 270, 440, 280, 300)).upperMm(),
                1e-12);
        assertEquals(
                7, gap(channel, general(Prism.box(47, 60, 10, 440, 280, 200))).upperMm(), 1e-9);
    }

    @Test
    void flushAtOddYaws() {
        for (double yaw : new double[] {0.1, 0.7, 1.234, 2.5, 4.0}) {
            for (double gap : new double[] {-0.01, 0, 0.01}) {
                Move turn = Move.turn(yaw, Vector3D.of(3000, -2000, 0));
                Solid beside = Prism.box(100 + gap, -50, 20, 200, 150, 80).moved(turn);
                assertEquals(gap, gap(CUBE.moved(turn), beside).upperMm(), 1e-9);
                assertEquals(gap, gap(general(CUBE).moved(turn), beside).upperMm(), 1e-9);
                assertEquals(
                        gap, gap(general(CUBE).moved(turn), general(beside)).upperMm(), 1e-9);
            }
        }
    }

    @Test
    void aHoleIsEmpty() {
        Outline ring = Outline.rectangle(0, 0, 400, 400)
                .withHoles(List.of(List.of(
                        Vector2D.of(100, 100), Vector2D.of(300, 100), Vector2D.of(300, 300), Vector2D.of(100, 300))));
        Solid frame = Prism.of(ring, 0, 50);
        assertEquals(40, gap(frame, Prism.box(140, 140, 0, 260, 260, 50)).upperMm(), 1e-12);
        assertEquals(100 - 60, gap(frame, Prism.round(200, 200, 60, 10, 20)).upperMm(), 1e-12);
        assertEquals(10, gap(frame, Prism.box(140, 140, 60, 400, 260, 90)).upperMm(), 1e-12);
        // Stuck across the frame: the cheapest way out is up, 5 mm.
        assertEquals(-5, gap(frame, Prism.box(20, 140, 45, 260, 260, 90)).upperMm(), 1e-9);
        // Low down, out sideways into the hole is cheapest: 4 mm.
        assertEquals(-4, gap(frame, Prism.box(96, 140, 0, 250, 260, 50)).upperMm(), 1e-9);
    }

    @Test
    void depthIsTheLeastShiftThatSeparates() {
        assertEquals(-10, gap(CUBE, Prism.box(90, -20, -20, 300, 120, 120)).upperMm(), 1e-12);
        assertEquals(-8, gap(CUBE, Prism.box(20, 20, 92, 80, 80, 300)).upperMm(), 1e-12);
        // One inside the other: not the common length but the way out.
        assertEquals(-55, gap(CUBE, Prism.box(40, 45, 45, 60, 65, 60)).upperMm(), 1e-9);
        assertEquals(-55, gap(general(CUBE), Prism.box(40, 45, 45, 60, 65, 60)).upperMm(), 1e-9);
    }

    @Test
    void roundThings() {
        assertEquals(40, gap(CUBE, Prism.round(200, 50, 60, 0, 100)).upperMm(), 1e-12);
        assertEquals(
                Math.hypot(30, 40) - 20,
                gap(CUBE, Prism.round(130, 140, 20, 50, 90)).upperMm(),
                1e-12);
        assertEquals(
                Math.hypot(40, 30),
                gap(CUBE, Prism.round(200, 50, 60, 130, 190)).upperMm(),
                1e-12);
        Solid pipe = RoundCylinder.of(Vector3D.of(-50, 50, 180), Vector3D.of(300, 50, 180), 55);
        assertEquals(25, gap(CUBE, pipe).upperMm(), 1e-9);
        // The flat end of a lying pipe is exact.
        Solid end = RoundCylinder.of(Vector3D.of(112.5, 50, 50), Vector3D.of(300, 50, 50), 30);
        assertEquals(12.5, gap(CUBE, end).upperMm(), 1e-9);
        // A lying flat oval beside: half major 75 + 25 from the axis.
        Solid oval =
                RoundCylinder.flatOval(Vector3D.of(0, 250, 50), Vector3D.of(100, 250, 50), Vector3D.of(0, 75, 0), 25);
        assertEquals(50, gap(CUBE, oval).upperMm(), 1e-9);
        // A round depth is certified to 1e-5 mm: one bound is the shift found, the other what no shift can undercut.
        Gap sunk = Clearance.between(CUBE, pipe.moved(Move.shift(0, 0, -30)));
        assertEquals(-5, sunk.lowerMm(), 1e-9);
        assertEquals(-5, sunk.upperMm(), 1e-5);
        Solid slot = Prism.of(Footprint.slot(Vector2D.of(150, 0), Vector2D.of(150, 100), 20), 0, 10);
        assertEquals(30, gap(CUBE, slot).upperMm(), 1e-12);
    }

    @Test
    void roundingIsEuclideanGrowth() {
        Solid corner = Prism.box(160, 180, 0, 300, 300, 100);
        assertEquals(100, gap(CUBE, corner).upperMm(), 1e-12);
        assertEquals(70, gap(CUBE, corner.rounded(30)).upperMm(), 1e-12);
        assertEquals(
                58.309518948453,
                gap(Prism.box(-30, -30, 0, 130, 130, 100), corner).upperMm(),
                1e-9);
    }

    @Test
    void ofBodiesTheNearestPiecesSpeak() {
        Body table = Body.of(Prism.box(0, 0, 700, 900, 600, 730), Prism.box(0, 0, 0, 50, 50, 700));
        Body lamp = Body.of(Prism.box(100, 100, 900, 200, 200, 950), Prism.box(100, 100, 745, 110, 110, 900));
        Gap gap = Clearance.between(table, lamp);
        assertEquals(15, gap.upperMm(), 1e-12);
        assertEquals(0, gap.pieceA());
        assertEquals(1, gap.pieceB());
        assertPoint(0, 0, 1, gap.direction());
    }

    @Test
    void verdictsHaveThreeValues() {
        assertEquals(Sufficiency.CLEAR, Sufficiency.of(10, 10, 10));
        assertEquals(Sufficiency.CLEAR, Sufficiency.of(10 - 5e-7, 10, 10));
        assertEquals(Sufficiency.SHORT, Sufficiency.of(9, 9.99, 10));
        assertEquals(Sufficiency.UNDECIDED, Sufficiency.of(9, 10.5, 10));
        assertEquals(Sufficiency.CLEAR, Sufficiency.of(gap(CUBE, Prism.box(100, 0, 0, 200, 50, 50)), 0));
        assertThrows(IllegalArgumentException.class, () -> Sufficiency.of(1, 1, Double.NaN));
        assertTrue(Sufficiency.of(gap(CUBE, Prism.box(99, 0, 0, 200, 50, 50)), 0) == Sufficiency.SHORT);
    }
}
