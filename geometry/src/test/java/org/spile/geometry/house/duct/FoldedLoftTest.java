package org.spile.geometry.house.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;

/** Areas through folded transitions: against volumes of slices by Commons Geometry, and by the laws of Brunn and Minkowski. */
class FoldedLoftTest {
    private static final Precision.DoubleEquivalence NEAR = Precision.doubleEquivalenceOfEpsilon(1e-9);
    private static final double LENGTH_MM = 240;
    /** Folds in each quarter of the sheet that the library measures. */
    private static final int FOLDS = 6;

    /** Every section to every section, aside by 30 and up by 20: volume of slices of the sheet folded from flat triangles. */
    @Test
    void everyPairing_asSlicesOfTheSheetSay() {
        for (Section from : Legs.SECTIONS) {
            for (Section to : Legs.SECTIONS) {
                for (double at : new double[] {10, 95, 200}) {
                    slice(from, to, at);
                }
            }
        }
    }

    private static void slice(Section from, Section to, double at) {
        double half = 2;
        List<Plane> planes = sheet(from, to);
        planes.add(Planes.fromPointAndNormal(Vector3D.of(at - half, 0, 0), Vector3D.Unit.MINUS_X, NEAR));
        planes.add(Planes.fromPointAndNormal(Vector3D.of(at + half, 0, 0), Vector3D.Unit.PLUS_X, NEAR));
        double volume = ConvexVolume.fromBounds(planes).getSize();
        // The area is a quadratic, so Simpson's rule is exact.
        double expected =
                2 * half * (area(from, to, at - half) + 4 * area(from, to, at) + area(from, to, at + half)) / 6;
        assertEquals(expected, volume, expected * 1e-6, from + " to " + to + " at " + at);
    }

    /** Ours at the axis, less what chords cut off quarter circles: (pi - 2 n sin(pi / 2n)) r2 for n chords a quarter. */
    private static double area(Section from, Section to, double at) {
        double share = at / LENGTH_MM;
        double radius = radius(from) + share * (radius(to) - radius(from));
        DuctPiece piece = Legs.alone(from, to, LENGTH_MM, 0, 0);
        double chords = 2 * FOLDS * Math.sin(Math.PI / 2 / FOLDS);
        return piece.clearAreaMm2(share * piece.lengthMm()) - (Math.PI - chords) * radius * radius;
    }

    private static double radius(Section section) {
        return section instanceof Section.Rectangular ? 0 : Math.min(section.wideMm(), section.highMm()) / 2;
    }

    /** Faces of the folded sheet: flats to flats, and a fan of triangles at each corner; written out anew for the test. */
    private static List<Plane> sheet(Section from, Section to) {
        List<Vector3D> near = ring(from, 0, 0, 0);
        List<Vector3D> far = ring(to, LENGTH_MM, 30, 20);
        List<Plane> planes = new ArrayList<>();
        Vector3D inside = Vector3D.of(LENGTH_MM / 2, 15, 10);
        for (int k = 0; k < near.size(); k++) {
            int next = (k + 1) % near.size();
            face(planes, inside, near.get(k), near.get(next), far.get(k));
            face(planes, inside, near.get(next), far.get(next), far.get(k));
        }
        return planes;
    }

    private static void face(List<Plane> planes, Vector3D inside, Vector3D a, Vector3D b, Vector3D c) {
        Vector3D normal = b.subtract(a).cross(c.subtract(a));
        if (normal.norm() > 1e-6) {
            Vector3D outward = normal.dot(a.subtract(inside)) > 0 ? normal : normal.negate();
            planes.add(Planes.fromPointAndNormal(a, outward, NEAR));
        }
    }

    private static List<Vector3D> ring(Section section, double x, double y, double z) {
        double radius = radius(section);
        List<Vector3D> ring = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            double left = (quarter % 3 == 0 ? 1 : -1) * (section.wideMm() / 2 - radius);
            double up = (quarter < 2 ? 1 : -1) * (section.highMm() / 2 - radius);
            for (int k = 0; k <= FOLDS; k++) {
                double angle = Math.PI / 2 * (quarter + (double) k / FOLDS);
                ring.add(Vector3D.of(x, y + left + radius * Math.cos(angle), z + up + radius * Math.sin(angle)));
            }
        }
        return ring;
    }

    /** A case: two sections, a length, and how far the ends are out of line. */
    record Case(Section from, Section to, double lengthMm, double leftMm, double upMm) {}

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Double> size = Arbitraries.doubles().between(20, 600).ofScale(2);
        Arbitrary<Section> section = Combinators.combine(Arbitraries.integers().between(0, 2), size, size)
                .as((form, wide, high) -> switch (form) {
                    case 0 -> new Section.Rectangular(wide, high);
                    case 1 -> new Section.Round(wide);
                    default -> new Section.FlatOval(wide, high);
                });
        Arbitrary<Double> aside = Arbitraries.doubles().between(-150, 150).ofScale(2);
        return Combinators.combine(section, section, size.map(s -> s + 200), aside, aside)
                .as(Case::new);
    }

    /** Brunn–Minkowski: the root of the area is concave along a loft, so its least is at an end. */
    @Property(tries = 300)
    void rootOfAreaIsConcave(@ForAll("cases") Case c) {
        concave(c);
    }

    static void concave(Case c) {
        DuctPiece piece = Legs.alone(c.from(), c.to(), c.lengthMm(), c.leftMm(), c.upMm());
        double length = piece.lengthMm();
        double least = piece.least().areaMm2();
        for (double share = 0.1; share < 0.95; share += 0.1) {
            double before = Math.sqrt(piece.clearAreaMm2((share - 0.1) * length));
            double after = Math.sqrt(piece.clearAreaMm2((share + 0.1) * length));
            double here = piece.clearAreaMm2(share * length);
            assertTrue(Math.sqrt(here) >= (before + after) / 2 - 1e-6, c + " at " + share);
            assertTrue(here >= least * (1 - 1e-12), c + " at " + share);
        }
        assertEquals(Math.min(piece.clearAreaMm2(0), piece.clearAreaMm2(length)), least, least * 1e-12);
    }

    /** The same the other way round, turned by a quarter and ten metres away. */
    @Property(tries = 200)
    void reversedTurnedAndShifted_isTheSame(@ForAll("cases") Case c) {
        alike(c);
    }

    static void alike(Case c) {
        DuctPiece piece = Legs.alone(c.from(), c.to(), c.lengthMm(), c.leftMm(), c.upMm());
        Vector3D end = Vector3D.of(c.lengthMm(), c.leftMm(), c.upMm());
        DuctPiece back = Legs.pieces(Screws.NONE, Legs.leg(end, Vector3D.ZERO, Vector3D.Unit.MINUS_X, c.to(), c.from()))
                .get(0);
        Vector3D from = Vector3D.of(10_000, -3_000, 500);
        Vector3D to = from.add(Vector3D.of(-c.leftMm(), c.lengthMm(), c.upMm()));
        DuctPiece turned = Legs.pieces(Screws.NONE, Legs.leg(from, to, Vector3D.Unit.PLUS_Y, c.from(), c.to()))
                .get(0);
        double length = piece.lengthMm();
        for (double share : new double[] {0, 0.3, 1}) {
            double area = piece.clearAreaMm2(share * length);
            double round = piece.wettedPerimeterMm(share * length);
            assertEquals(area, back.clearAreaMm2((1 - share) * length), area * 1e-9, c + " backwards");
            assertEquals(area, turned.clearAreaMm2(share * length), area * 1e-9, c + " turned");
            assertEquals(round, turned.wettedPerimeterMm(share * length), round * 1e-9, c + " turned");
        }
    }
}
