package org.spile.geometry.kernel.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class ConvexPolyhedronTest {
    static List<Vector3D> box(double a, double b, double c) {
        List<Vector3D> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(Vector3D.of((i & 1) * a, (i >> 1 & 1) * b, (i >> 2) * c));
        }
        return corners;
    }

    @Test
    void aBoxHasSixFacesEvenWhenTurnedAndFullOfOtherPoints() {
        Random random = new Random(7);
        for (int run = 0; run < 200; run++) {
            Vector3D axis = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            Move turn = Move.about(Vector3D.of(9, 8, 7), axis, random.nextDouble() * 6);
            List<Vector3D> points = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                double x = random.nextInt(5) * 25;
                points.add(turn.apply(Vector3D.of(x, random.nextInt(5) * 50, random.nextInt(5) * 75)));
            }
            box(100, 200, 300).forEach(corner -> points.add(turn.apply(corner)));
            ConvexPolyhedron hull = ConvexPolyhedron.hull(points);
            assertEquals(8, hull.vertices().size());
            assertEquals(6, hull.faces().size());
            assertEquals(100 * 200 * 300, hull.volumeMm3(), 1e-5);
        }
    }

    @Test
    void randomHullsHoldTheirPointsAndObeyEuler() {
        Random random = new Random(8);
        for (int run = 0; run < 100; run++) {
            List<Vector3D> points = new ArrayList<>();
            for (int i = 0; i < 4 + random.nextInt(60); i++) {
                points.add(Vector3D.of(random.nextDouble(), random.nextDouble(), random.nextDouble())
                        .multiply(500));
            }
            ConvexPolyhedron hull = ConvexPolyhedron.hull(points);
            int sides = hull.faces().stream().mapToInt(List::size).sum();
            assertEquals(2, hull.vertices().size() - sides / 2 + hull.faces().size());
            for (int f = 0; f < hull.faces().size(); f++) {
                Vector3D base = hull.vertices().get(hull.faces().get(f).get(0));
                Vector3D normal = hull.normal(f);
                for (Vector3D point : points) {
                    assertEquals(0, Math.max(0, point.subtract(base).dot(normal)), 1e-6);
                }
            }
        }
    }

    @Test
    void aLoftOfTwoRectanglesHasTheVolumeOfAPrismoid() {
        List<Vector3D> small = List.of(
                Vector3D.of(0, -50, -25), Vector3D.of(0, 50, -25), Vector3D.of(0, 50, 25), Vector3D.of(0, -50, 25));
        List<Vector3D> large = List.of(
                Vector3D.of(300, -100, -60),
                Vector3D.of(300, 100, -60),
                Vector3D.of(300, 100, 60),
                Vector3D.of(300, -100, 60));
        // Prismoidal formula: V = h (A0 + 4 Am + A1) / 6 with the middle section 150 by 85; any geometry handbook.
        double volume = 300 * (100 * 50 + 4 * 150 * 85 + 200 * 120) / 6.0;
        assertEquals(volume, ConvexPolyhedron.loft(small, large).volumeMm3(), 1e-6);
    }

    @Test
    void flatOrEmptySetsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> ConvexPolyhedron.hull(List.of()));
        assertThrows(IllegalArgumentException.class, () -> ConvexPolyhedron.hull(box(100, 100, 1e-7)));
        assertThrows(IllegalArgumentException.class, () -> ConvexPolyhedron.hull(box(100, 0, 0)));
        assertThrows(IllegalArgumentException.class, () -> ConvexPolyhedron.hull(List.of(Vector3D.NaN, Vector3D.ZERO)));
    }

    @Test
    void aTiltedPrismKeepsItsFacesAndVolume() {
        Move tilt = Move.about(Vector3D.ZERO, Vector3D.of(1, 2, 0), 0.4);
        ConvexPolyhedron tilted =
                (ConvexPolyhedron) Prism.box(0, 0, 0, 30, 40, 50).moved(tilt);
        assertEquals(6, tilted.faces().size());
        assertEquals(30 * 40 * 50, tilted.volumeMm3(), 1e-8);
    }
}
