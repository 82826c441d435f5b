package org.spile.geometry.house.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Pieces against closed forms worked by hand. */
class DuctPiecesTest {
    private static final Vector3D X = Vector3D.Unit.PLUS_X;
    private static final Vector3D Y = Vector3D.Unit.PLUS_Y;
    private static final double EXACT = 1e-9;

    @Test
    void straight_passesItsSection() {
        DuctPiece piece = Legs.alone(Legs.OVAL, Legs.OVAL, 500, 0, 0);
        assertInstanceOf(Straight.class, piece);
        // A circle of 90 and a rectangle of 170 x 90 between its halves.
        double area = Math.PI * 45 * 45 + 170 * 90;
        assertEquals(area, piece.clearAreaMm2(123), area * EXACT);
        assertEquals(Math.PI * 90 + 2 * 170, piece.wettedPerimeterMm(123), EXACT * 1000);
    }

    /** A 3-4-5 triangle: length 400, out of line by 300, so 4/5 of the end section passes; its sloping side is seen as 4/5. */
    @Test
    void shearedRun_passesLessByItsSlant() {
        DuctPiece piece = Legs.alone(Legs.RECTANGLE, Legs.RECTANGLE, 400, 0, 300);
        assertInstanceOf(Offset.class, piece);
        assertEquals(500, piece.lengthMm(), EXACT);
        assertEquals(300 * 80 * 0.8, piece.clearAreaMm2(250), 1e-6);
        assertEquals(2 * (300 + 80 * 0.8), piece.wettedPerimeterMm(250), 1e-6);
        assertEquals(80 * 0.8, piece.clear().highMm(250), 1e-9);
    }

    /** A pipe laid aslant is turned, not sheared. */
    @Test
    void slantedPipe_passesItsCircle() {
        DuctPiece piece = Legs.alone(Legs.ROUND, Legs.ROUND, 400, 0, 30);
        assertInstanceOf(Straight.class, piece);
        assertEquals(Math.PI * 125 * 125 / 4, piece.clearAreaMm2(10), 1e-6);
    }

    /** Half-way from a square of 150 to a circle of 125: a square of 75 with corners of radius 31.25. */
    @Test
    void squareToRound_halfWay() {
        DuctPiece piece = Legs.alone(Legs.SQUARE, Legs.ROUND, 200, 0, 0);
        assertInstanceOf(Transition.class, piece);
        double area = 75 * 75 + 4 * 75 * 31.25 + Math.PI * 31.25 * 31.25;
        assertEquals(area, piece.clearAreaMm2(100), 1e-6);
        assertEquals(4 * 75 + 2 * Math.PI * 31.25, piece.wettedPerimeterMm(100), 1e-6);
    }

    /** Keeping a side moves the middle, but nothing is taken off: the air runs along the side kept. */
    @Test
    void flushTransition_endsWithItsSection() {
        Section low = new Section.Rectangular(300, 40);
        DuctLeg leg = Legs.leg(
                Vector3D.ZERO, Vector3D.of(200, 0, 20), X, Legs.RECTANGLE, low, "top", Optional.empty(), Vanes.NONE);
        DuctPiece piece = Legs.pieces(Screws.NONE, leg).get(0);
        assertEquals(300 * 40, piece.least().areaMm2(), 1e-6);
        assertEquals(piece.lengthMm(), piece.least().atMm(), EXACT);
    }

    @Test
    void mitre_takesHalfTheDuctOffEitherLeg_andPassesTheSection() {
        List<DuctPiece> pieces = Legs.pieces(Screws.NONE, corner(Optional.empty(), Vanes.NONE));
        assertEquals(List.of("straight", "mitred bend", "straight"), words(pieces));
        DuctPiece bend = pieces.get(1);
        assertEquals(850, bend.startMm(), EXACT);
        assertEquals(1150, bend.endMm(), EXACT);
        for (double at = 0; at <= 300; at += 12.5) {
            assertEquals(24_000, bend.clearAreaMm2(at), 1e-6);
        }
        // In the corner itself the ring lies in the plane of the mitre: the root of two times the section.
        assertEquals(
                24_000 * Math.sqrt(2),
                FoldedSheet.areaVector(bend.clear().outline(150)).norm(),
                1e-6);
    }

    @Test
    void radiusBend_isAQuarterOfACircleLong() {
        List<DuctPiece> pieces = Legs.pieces(Screws.NONE, corner(Optional.of(200.0), Vanes.NONE));
        DuctPiece bend = pieces.get(1);
        assertInstanceOf(RadiusBend.class, bend);
        assertEquals(Math.PI * 100, bend.lengthMm(), 1e-9);
        assertEquals(800, bend.startMm(), EXACT);
        assertEquals(1200, bend.endMm(), EXACT);
        // Half-way round, on the circle about (800, 200).
        double half = 200 * Math.sqrt(0.5);
        Vector3D middle = bend.clear().middle(Math.PI * 50);
        assertEquals(0, middle.distance(Vector3D.of(800 + half, 200 - half, 0)), 1e-9);
    }

    /** 5 vanes of 0.6 seen 80 high: 240 mm2; 6 screws (760 round, 150 apart) of 4.2 standing in 10: 252 mm2. */
    @Test
    void vanesAndScrewTips_areTakenOff() {
        List<DuctPiece> pieces = Legs.pieces(new Screws(10, 4.2, 150), corner(Optional.empty(), new Vanes(5, 0.6)));
        assertEquals(24_000 - 240 - 252, pieces.get(1).least().areaMm2(), 1e-6);
        assertEquals(24_000 - 252, pieces.get(0).least().areaMm2(), 1e-6);
        assertEquals(
                "5 vanes and 6 screw tips", pieces.get(1).intrusions().get(1).words());
    }

    /** Straight, mitre, straight: 6 screws at 0, 850, in the mitre at 1000, at 1150 and at the end, 1900. */
    @Test
    void screws_standInEveryJoint_alsoWhereAMitreMeetsItsStraights() {
        List<Double> stations = new ArrayList<>();
        for (DuctPiece piece : Legs.pieces(new Screws(10, 4.2, 150), corner(Optional.empty(), Vanes.NONE))) {
            for (Intrusion tips : piece.intrusions()) {
                assertEquals("6 screw tips", tips.words());
                assertEquals(252, tips.areaMm2(), 1e-9);
                stations.add(Math.rint(piece.stationMm(tips.atMm())));
            }
        }
        assertEquals(List.of(0.0, 850.0, 1000.0, 1150.0, 1900.0), stations);
    }

    /**
     * A transition from 300 to 200 wide that ends in a mitre to the left: its left side ends 100 before the corner, its right
     * 100 beyond; both run straight from 150 to 100 off the middle. Worked by hand.
     */
    @Test
    void transitionIntoMitre_isCutAsFolded() {
        Section narrow = new Section.Rectangular(200, 80);
        DuctLeg first = Legs.leg(Vector3D.ZERO, Vector3D.of(600, 0, 0), X, Legs.RECTANGLE, narrow);
        DuctLeg second = Legs.leg(Vector3D.of(600, 0, 0), Vector3D.of(600, 500, 0), Y, narrow, narrow);
        DuctPiece transition = Legs.pieces(Screws.NONE, first, second).get(0);
        double left = 150 - 50 * 250.0 / 500;
        double right = 150 - 50 * 250.0 / 700;
        assertEquals(500, transition.lengthMm(), EXACT);
        assertEquals((left + right) * 80, transition.clearAreaMm2(250), 1e-6);
    }

    private static DuctLeg[] corner(Optional<Double> bend, Vanes vanes) {
        Vector3D at = Vector3D.of(1000, 0, 0);
        return new DuctLeg[] {
            Legs.leg(Vector3D.ZERO, at, X, Legs.RECTANGLE, Legs.RECTANGLE),
            Legs.leg(at, Vector3D.of(1000, 900, 0), Y, Legs.RECTANGLE, Legs.RECTANGLE, "", bend, vanes)
        };
    }

    private static List<String> words(List<DuctPiece> pieces) {
        return pieces.stream().map(DuctPiece::word).toList();
    }
}
