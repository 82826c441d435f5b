package org.spile.geometry.kernel.planar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final Outline ANGLE = outline("0,0 300,0 300,100 100,100 100,250 0,250");

    static Outline outline(String corners) {
        return Outline.of(corners(corners));
    }

    static List<Vector2D> corners(String text) {
        return text.isEmpty()
                ? List.of()
                : java.util.Arrays.stream(text.split(" "))
                        .map(pair -> pair.split(","))
                        .map(xy -> Vector2D.of(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))
                        .toList();
    }

    private static String fault(String corners) {
        return Outline.check(corners(corners)).map(OutlineFault::reason).orElse("none");
    }

    @Test
    void areaIsThatOfTheRectanglesItIsMadeOf() {
        assertEquals(300 * 100 + 100 * 150, ANGLE.areaMm2(), 1e-9);
        assertEquals(
                300 * 100 + 100 * 150 - 400,
                ANGLE.withHoles(List.of(corners("40,40 60,40 60,60 40,60"))).areaMm2(),
                1e-9);
    }

    @Test
    void eitherSenseOfRotationAndAClosingCornerMakeTheSameOutline() {
        assertEquals(outline("0,0 10,0 10,10"), outline("0,0 10,0 10,10 0,0"));
        assertEquals(50, outline("0,0 10,10 10,0").areaMm2(), 1e-12);
    }

    @Test
    void containsItsBoundaryButNotItsHole() {
        Outline ring = outline("0,0 100,0 100,100 0,100").withHoles(List.of(corners("40,40 60,40 60,60 40,60")));
        assertTrue(ring.contains(Vector2D.of(0, 50)));
        assertTrue(ring.contains(Vector2D.of(40, 50)));
        assertFalse(ring.contains(Vector2D.of(50, 50)));
        assertFalse(ring.contains(Vector2D.of(101, 50)));
    }

    @Test
    void distanceRespectsHoles() {
        Outline ring = outline("0,0 100,0 100,100 0,100").withHoles(List.of(corners("20,20 80,20 80,80 20,80")));
        assertEquals(15, ring.distanceTo(outline("35,40 60,40 60,60 35,60")), 1e-12);
        assertEquals(0, ring.distanceTo(outline("35,40 90,40 90,60 35,60")), 1e-12);
        assertEquals(50, ring.distanceTo(outline("130,140 140,140 140,150")), 1e-12);
    }

    @Test
    void aQuarterTurnIsExact() {
        assertEquals(outline("0,0 0,300 -100,300 -100,100 -250,100 -250,0"), ANGLE.turnedAndMoved(Math.PI / 2, 0, 0));
        assertFalse(ANGLE.isConvex());
        assertTrue(Outline.rectangle(0, 0, 1, 1).turnedAndMoved(0.3, 5, 5).isConvex());
    }

    @Test
    void faultsNameWhatIsWrong() {
        assertEquals("sides 1 and 3 cross or touch", fault("0,0 10,10 10,0 0,10"));
        assertEquals("an outline needs at least 3 different corners and has 2", fault("0,0 10,0 10,0 0,0"));
        assertEquals("an outline needs at least 3 different corners and has 0", fault(""));
        assertEquals("the outline folds back on itself at corner 2", fault("0,0 10,0 5,0 5,5"));
        assertEquals("corner 2 is not a place within 1 km of the origin", fault("0,0 1e9,0 5,5"));
        assertEquals("corner 1 is not a place within 1 km of the origin", fault("NaN,0 1,0 5,5"));
        assertEquals("none", fault("0,0 10,0 5,5"));
    }

    @Test
    void refusalsSayWhereAndWhy() {
        String crossing = assertThrows(IllegalArgumentException.class, () -> outline("0,0 10,10 10,0 0,10"))
                .getMessage();
        assertEquals(
                "sides 1 and 3 cross or touch at (5.0, 5.0) mm; an outline must be closed, simple and have an area",
                crossing);
        assertThrows(IllegalArgumentException.class, () -> Outline.rectangle(0, 0, 0, 5));
        assertThrows(
                IllegalArgumentException.class, () -> ANGLE.withHoles(List.of(corners("90,90 110,90 110,110 90,110"))));
        assertThrows(IllegalArgumentException.class, () -> ANGLE.mapped(2, 0, 0, 1, 0, 0));
    }
}
