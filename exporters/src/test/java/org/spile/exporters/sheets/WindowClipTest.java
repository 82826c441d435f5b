package org.spile.exporters.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Extent;

/** Values by hand: where straight lines meet the sides of a rectangle. */
class WindowClipTest {
    private static final Extent WINDOW = new Extent(0, 0, 100, 100);

    @Test
    void ring_halfInside_endsOpenAtTheEdge() {
        List<List<Vector2D>> pieces = WindowClip.ring(ring(50, 20, 150, 20, 150, 80, 50, 80), WINDOW);

        assertEquals(List.of(List.of(at(100, 80), at(50, 80), at(50, 20), at(100, 20))), pieces);
    }

    @Test
    void ring_slanted_isCutWhereItCrosses() {
        List<List<Vector2D>> pieces = WindowClip.ring(ring(-50, 20, 50, 120, 50, 400, -50, 400), WINDOW);

        assertEquals(List.of(List.of(at(0, 70), at(30, 100))), pieces);
    }

    @Test
    void ring_roundTheWindow_showsNothing() {
        assertEquals(List.of(), WindowClip.ring(ring(-10, -10, 200, -10, 200, 200, -10, 200), WINDOW));
    }

    @Test
    void ring_inTwoPlaces_givesTwoPieces() {
        List<List<Vector2D>> pieces = WindowClip.ring(ring(-50, 40, 150, 40, 150, 60, -50, 60), WINDOW);

        assertEquals(List.of(List.of(at(0, 40), at(100, 40)), List.of(at(100, 60), at(0, 60))), pieces);
    }

    @Property(tries = 300)
    void whatIsShownLiesInTheWindowAndWhatLiesThereIsShown(
            @ForAll @IntRange(min = -80, max = 180) int x,
            @ForAll @IntRange(min = -80, max = 180) int y,
            @ForAll @IntRange(min = 1, max = 150) int wide,
            @ForAll @IntRange(min = 1, max = 150) int high) {
        law(ring(x, y, x + wide, y, x + wide, y + high, x, y + high));
    }

    /** Twenty points a side: shown exactly where they lie strictly inside. */
    private static void law(List<Vector2D> ring) {
        List<List<Vector2D>> pieces = WindowClip.ring(ring, WINDOW);
        pieces.forEach(piece -> piece.forEach(
                point -> assertTrue(WINDOW.holds(Extent.around(List.of(point)), 1e-9), point + " of " + ring)));
        for (int i = 0; i < ring.size(); i++) {
            for (int k = 1; k < 20; k++) {
                Vector2D point = ring.get(i).lerp(ring.get((i + 1) % ring.size()), k / 20.0);
                boolean inside = point.getX() > 1e-6
                        && point.getX() < 100 - 1e-6
                        && point.getY() > 1e-6
                        && point.getY() < 100 - 1e-6;
                if (inside) {
                    assertTrue(near(pieces, point), point + " of " + ring + " is not shown");
                }
            }
        }
    }

    private static boolean near(List<List<Vector2D>> pieces, Vector2D point) {
        return pieces.stream().anyMatch(piece -> {
            for (int i = 1; i < piece.size(); i++) {
                Vector2D a = piece.get(i - 1);
                Vector2D b = piece.get(i);
                if (a.distance(point) + point.distance(b) - a.distance(b) < 1e-9) {
                    return true;
                }
            }
            return false;
        });
    }

    private static List<Vector2D> ring(double... xy) {
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(at(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }
}
