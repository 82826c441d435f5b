package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** Sections against closed forms, and against Commons Geometry's plane subsets for polyhedra. */
class CutTest {
    private static final Precision.DoubleEquivalence FINE = Precision.doubleEquivalenceOfEpsilon(1e-6);
    private static final Vector2D ORIGIN = Vector2D.ZERO;

    private static double area(List<Outline> outlines) {
        return outlines.stream().mapToDouble(Outline::areaMm2).sum();
    }

    @Test
    void aSharpPrismIsCutAlongItsOutline() {
        Outline angle = Outline.of(List.of(
                Vector2D.of(0, 0),
                Vector2D.of(300, 0),
                Vector2D.of(300, 100),
                Vector2D.of(100, 100),
                Vector2D.of(100, 250),
                Vector2D.of(0, 250)));
        Solid prism = Prism.of(angle, 10, 60);
        assertEquals(List.of(angle), Cut.horizontal(prism, 30));
        assertEquals(List.of(), Cut.horizontal(prism, 60));
        assertEquals(List.of(), Cut.horizontal(prism, 10));
        assertEquals(List.of(), Cut.horizontal(prism, 61));
        // Along y at x = 50 the angle is one piece of 250, at x = 200 one of 100.
        List<Outline> deep = Cut.vertical(prism, Vector2D.of(50, 0), Math.PI / 2);
        assertEquals(List.of(Outline.rectangle(0, 10, 250, 60)), deep);
        assertEquals(List.of(Outline.rectangle(0, 10, 100, 60)), Cut.vertical(prism, Vector2D.of(200, 0), Math.PI / 2));
        // Along x at y = 200, from the far side, coordinates run backwards.
        assertEquals(List.of(Outline.rectangle(200, 10, 300, 60)), Cut.vertical(prism, Vector2D.of(300, 200), Math.PI));
    }

    @Test
    void aFrameIsCutInTwo() {
        Outline ring = Outline.rectangle(0, 0, 400, 400)
                .withHoles(List.of(List.of(
                        Vector2D.of(100, 100), Vector2D.of(300, 100), Vector2D.of(300, 300), Vector2D.of(100, 300))));
        List<Outline> cut = Cut.vertical(Prism.of(ring, 0, 50), Vector2D.of(0, 200), 0);
        assertEquals(List.of(Outline.rectangle(0, 0, 100, 50), Outline.rectangle(300, 0, 400, 50)), cut);
    }

    @Test
    void polyhedraAgreeWithCommonsGeometry() {
        RandomSolids random = new RandomSolids(41);
        int cut = 0;
        for (int run = 0; run < 500; run++) {
            ConvexPolyhedron solid = (run % 2 == 0 ? random.box() : random.lump()).moved(random.anyTurn());
            Vector3D normal = random.direction();
            Vector3D right = normal.orthogonal();
            Vector3D inside = solid.bounds().middle().add(random.place(80));
            double found = area(Cut.by(solid, new CutPlane(inside, right, normal.cross(right))));
            assertEquals(sectionByCommonsGeometry(solid, inside, normal), found, 1e-3, "run " + run);
            cut += found > 0 ? 1 : 0;
        }
        assertTrue(cut > 300, "cut " + cut);
    }

    private static double sectionByCommonsGeometry(ConvexPolyhedron solid, Vector3D inside, Vector3D normal) {
        PlaneConvexSubset section = volume(solid)
                .trim(Planes.fromPointAndNormal(inside, normal, FINE).span());
        return section == null ? 0 : section.getSize();
    }

    private static ConvexVolume volume(ConvexPolyhedron solid) {
        List<Plane> bounds = new ArrayList<>();
        for (int f = 0; f < solid.faces().size(); f++) {
            Vector3D base = solid.vertices().get(solid.faces().get(f).get(0));
            bounds.add(Planes.fromPointAndNormal(base, solid.normal(f), FINE));
        }
        return ConvexVolume.fromBounds(bounds);
    }

    @Test
    void volumesAgreeWithCommonsGeometry() {
        RandomSolids random = new RandomSolids(42);
        for (int run = 0; run < 50; run++) {
            ConvexPolyhedron solid = random.lump().moved(random.anyTurn());
            assertEquals(1, volume(solid).getSize() / solid.volumeMm3(), 1e-9);
        }
    }

    @Test
    void aLyingPipeIsARectangleAlongAndACircleAcross() {
        Solid pipe = RoundCylinder.of(Vector3D.of(0, 0, 500), Vector3D.of(2000, 0, 500), 80);
        Outline along = Cut.vertical(pipe, ORIGIN, 0).get(0);
        assertEquals(2000 * 160, along.areaMm2(), 1e-3);
        assertEquals(420, along.minY(), 1e-6);
        // 30 off the axis: a chord of 2 √(80² − 30²).
        double chord = 2 * Math.sqrt(80 * 80 - 30 * 30);
        assertEquals(2000 * chord, area(Cut.vertical(pipe, Vector2D.of(0, 30), 0)), 1e-3);
        double across = area(Cut.vertical(pipe, Vector2D.of(700, 0), Math.PI / 2));
        double circle = Math.PI * 80 * 80;
        assertTrue(across >= circle && across <= circle + 2 * Math.PI * 80 * Cut.SAGITTA_MM, "area " + across);
        // At 30° to the axis: an ellipse of half axes 80 and 80 / sin 30°.
        double ellipse = Math.PI * 80 * 160;
        double oblique = area(Cut.vertical(pipe, Vector2D.of(1000, 0), Math.PI / 6));
        assertTrue(oblique >= ellipse && oblique <= ellipse + 800 * Cut.SAGITTA_MM, "area " + oblique);
    }

    @Test
    void uprightRoundThings() {
        Solid drum = Prism.round(100, 200, 60, 0, 300);
        double circle = area(Cut.horizontal(drum, 150));
        assertTrue(circle >= Math.PI * 3600 && circle < Math.PI * 3600 + 380 * Cut.SAGITTA_MM);
        assertEquals(120 * 300, area(Cut.vertical(drum, Vector2D.of(100, 200), 1.1)), 1e-3);
        Solid slot = Prism.of(Footprint.slot(Vector2D.of(0, 0), Vector2D.of(500, 0), 40), 0, 10);
        assertEquals(80 * 10, area(Cut.vertical(slot, Vector2D.of(250, 0), Math.PI / 2)), 1e-6);
    }

    @Test
    void roundedEdges() {
        Solid soft = Prism.box(0, 0, 0, 100, 100, 100).rounded(20);
        // Half way up: a square grown by 20 (Steiner); at the top face grown by √(20² − 12²) = 16 when 12 above.
        double middle = 100 * 100 + 400 * 20 + Math.PI * 400;
        double high = 100 * 100 + 400 * 16 + Math.PI * 256;
        double slack = 600 * Cut.SAGITTA_MM;
        double found = area(Cut.horizontal(soft, 50));
        assertTrue(found >= middle - 1e-6 && found < middle + slack, "area " + found);
        found = area(Cut.horizontal(soft, 112));
        assertTrue(found >= high - 1e-6 && found < high + slack, "area " + found);
        assertEquals(List.of(), Cut.horizontal(soft, 120));
    }

    @Test
    void bodiesAreCutInOneAndPlanesMustBeSquare() {
        Body table = Body.of(
                Prism.box(0, 0, 700, 900, 600, 730),
                Prism.box(0, 0, 0, 50, 600, 700),
                Prism.box(850, 0, 0, 900, 600, 700));
        List<Outline> section = Cut.vertical(table, Vector2D.of(0, 300), 0);
        assertEquals(1, section.size());
        assertEquals(900 * 30 + 2 * 50 * 700, area(section), 1e-9);
        assertEquals(2, Cut.horizontal(table, 100).size());
        assertEquals(
                1,
                Cut.by(table.moved(Move.shift(0, 0, 5)), CutPlane.horizontal(720))
                        .size());
        assertThrows(
                IllegalArgumentException.class,
                () -> new CutPlane(Vector3D.ZERO, Vector3D.Unit.PLUS_X, Vector3D.of(1, 1, 0)));
    }
}
