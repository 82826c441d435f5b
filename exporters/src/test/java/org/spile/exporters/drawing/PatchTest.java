package org.spile.exporters.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PatchTest {

    private static Patch box(double x, double y, double angleDeg) {
        var corners = Extent.ofSize(-5, -2, 10, 4).corners().stream()
                .map(corner -> Places.put(corner, angleDeg, Vector2D.of(x, y)))
                .toList();
        return new Patch(corners);
    }

    @Test
    void uprightBoxes_nearByTheirTrueGap() {
        assertFalse(box(0, 0, 0).nearer(box(13, 0, 0), 3));
        assertTrue(box(0, 0, 0).nearer(box(13, 0, 0), 3.001));
        assertTrue(box(0, 0, 0).nearer(box(9, 0, 0), 0));
        assertFalse(box(0, 0, 0).nearer(box(9, 0, 0), -1));
    }

    @Test
    void aLineThroughATurnedBox_isFound_besideItIsNot() {
        var box = box(0, 0, 30);
        assertTrue(box.nearer(Patch.of(Vector2D.of(-20, 0), Vector2D.of(20, 0)), 0));
        assertFalse(box.nearer(Patch.of(Vector2D.of(-20, 6), Vector2D.of(20, 6)), 0));
        var inside = box.inside(Vector2D.of(0, -20), Vector2D.of(0, 20)).orElseThrow();
        // the box is 4 high, turned by 30 degrees: an upright line stays in it for 4 / cos 30
        assertEquals(4 / Math.cos(Math.toRadians(30)), (inside.last() - inside.first()) * 40, 1e-9);
    }

    @Property(tries = 1000)
    void boxesThatShareAPoint_areNeverFar(
            @ForAll @DoubleRange(min = -12, max = 12) double x,
            @ForAll @DoubleRange(min = -12, max = 12) double y,
            @ForAll @DoubleRange(min = 0, max = 180) double angleDeg) {
        law(x, y, angleDeg);
    }

    /** Brute force: if any of a fine grid of points of one box lies in the other, they must be near. */
    static void law(double x, double y, double angleDeg) {
        var fixed = box(0, 0, 0);
        var turned = box(x, y, angleDeg);
        var shared = grid().stream()
                .map(point -> Places.put(point, angleDeg, Vector2D.of(x, y)))
                .anyMatch(point -> Math.abs(point.getX()) < 5 && Math.abs(point.getY()) < 2);
        if (shared) {
            assertTrue(fixed.nearer(turned, 0));
            assertTrue(turned.nearer(fixed, 0));
        }
        assertEquals(fixed.nearer(turned, 0.5), turned.nearer(fixed, 0.5));
    }

    private static List<Vector2D> grid() {
        return IntStream.range(0, 21 * 9)
                .mapToObj(i -> Vector2D.of(-5 + i % 21 * 0.5, -2 + i / 21 % 9 * 0.5))
                .toList();
    }
}
