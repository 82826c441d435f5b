package org.spile.geometry.kernel.planar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** What open rings leave of a window, by hand. */
class FreePlanTest {
    private static final List<Outline> WINDOW = List.of(Outline.rectangle(0, 0, 100, 50));

    @Test
    void nothingTakenLeavesAll() {
        assertEquals(5000, FreePlan.of(WINDOW, List.of()).areaMm2(), 1e-9);
    }

    @Test
    void aRingInTheMiddleLeavesAHole() {
        FreePlan free = FreePlan.of(WINDOW, List.of(box(40, 20, 60, 30)));
        assertEquals(4800, free.areaMm2(), 1e-9);
        assertEquals(1, free.areas().get(0).holes().size());
        assertTrue(free.lines().isEmpty() && free.points().isEmpty());
    }

    @Test
    void twoRingsThatTouchLeaveALineBetweenThem() {
        FreePlan free = FreePlan.of(WINDOW, List.of(box(-5, -5, 30, 55), box(30, -5, 105, 55)));
        assertTrue(free.areas().isEmpty(), "an open ring doesn't take its border");
        assertEquals(List.of(List.of(Vector2D.of(30, 0), Vector2D.of(30, 50))), free.lines());
    }

    @Test
    void aSlotOfAMillionthLessIsShut() {
        FreePlan free = FreePlan.of(WINDOW, List.of(box(-5, -5, 30.00001, 55), box(30, -5, 105, 55)));
        assertTrue(free.isEmpty());
    }

    @Test
    void fourRingsThatMeetLeaveAPoint() {
        FreePlan free = FreePlan.of(
                WINDOW, List.of(box(-5, -5, 30, 20), box(30, -5, 105, 20), box(-5, 20, 30, 55), box(30, 20, 105, 55)));
        assertTrue(free.areas().isEmpty());
        double length = 0;
        for (List<Vector2D> line : free.lines()) {
            length += line.get(0).distance(line.get(line.size() - 1));
        }
        assertEquals(150, length, 1e-3, "the cross between them");
        FreePlan point = FreePlan.of(
                WINDOW,
                List.of(
                        box(-5, -5, 30, 55),
                        List.of(Vector2D.of(30, 25), Vector2D.of(60, -60), Vector2D.of(110, -60), Vector2D.of(110, 25)),
                        List.of(Vector2D.of(30, 25), Vector2D.of(110, 25), Vector2D.of(110, 120), Vector2D.of(60, 120)),
                        box(31, -5, 105, 55)));
        assertTrue(point.areas().stream().allMatch(area -> area.maxX() <= 31 + 1e-9));
    }

    @Test
    void theSlotsPlaceIsAlsoThereBesideAnArea() {
        FreePlan free = FreePlan.of(WINDOW, List.of(box(-5, -5, 30, 40), box(30, -5, 105, 40)));
        assertEquals(1000, free.areaMm2(), 1e-9);
        assertEquals(1, free.lines().size());
        Vector2D low = free.lines().get(0).get(0);
        assertEquals(0, low.distance(Vector2D.of(30, 0)), 1e-9);
    }

    @Test
    void theRoomiestPlaceIsTheMiddleOfTheLargestDisc() {
        Roomiest best = Roomiest.of(FreePlan.of(List.of(Outline.rectangle(0, 0, 40, 40)), List.of()))
                .orElseThrow();
        assertEquals(20, best.roomMm(), 2 * Roomiest.FINE_MM);
        assertEquals(20, best.place().getX(), 2 * Roomiest.FINE_MM);
        assertTrue(Roomiest.of(FreePlan.none()).isEmpty());
    }

    private static List<Vector2D> box(double x0, double y0, double x1, double y1) {
        return List.of(Vector2D.of(x0, y0), Vector2D.of(x1, y0), Vector2D.of(x1, y1), Vector2D.of(x0, y1));
    }
}
