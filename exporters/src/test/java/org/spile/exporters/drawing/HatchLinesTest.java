package org.spile.exporters.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class HatchLinesTest {

    private static Polyline rectangle(double x, double y, double wide, double high) {
        return Polyline.rectangle(Layer.HATCHING.pen(), Extent.ofSize(x, y, wide, high));
    }

    private static Hatch hatch(Material material, Polyline... loops) {
        return new Hatch(Layer.HATCHING.pen(), material, List.of(loops), 0);
    }

    private static double length(List<Line> lines) {
        return lines.stream()
                .mapToDouble(line -> line.from().distance(line.to()))
                .sum();
    }

    @Test
    void totalLengthTimesSpacing_isTheArea() {
        // Parallel lines a distance s apart cover an area A with a length of A / s, but for what the border adds.
        var lines = HatchLines.of(hatch(Material.GENERAL, rectangle(0, 0, 600, 400)), 1, List.of());
        assertEquals(600 * 400 / 3.0, length(lines), 0.01 * 600 * 400 / 3);
    }

    @Test
    void aHole_isLeftOut() {
        var lines = HatchLines.of(
                hatch(Material.GENERAL, rectangle(0, 0, 600, 400), rectangle(100, 100, 200, 200)), 1, List.of());
        assertEquals((600 * 400 - 200 * 200) / 3.0, length(lines), 0.01 * 600 * 400 / 3);
        var hole = Extent.ofSize(100, 100, 200, 200).grown(-1e-6);
        assertTrue(lines.stream().noneMatch(line -> holds(hole, line.from().lerp(line.to(), 0.5))));
    }

    private static boolean holds(Extent extent, Vector2D at) {
        return extent.holds(new Extent(at.getX(), at.getY(), at.getX(), at.getY()), 0);
    }

    @Test
    void aTextInTheArea_staysClear() {
        var text = Text.of(Layer.NOTES.pen(), Vector2D.of(100, 100), "cooler").patch(1);
        var lines = HatchLines.of(hatch(Material.WOOL, rectangle(0, 0, 300, 200)), 1, List.of(text));
        assertFalse(lines.isEmpty());
        assertTrue(lines.stream().noneMatch(line -> text.nearer(Patch.of(line.from(), line.to()), -1e-6)));
    }

    @Test
    void aRoundArea_hasLinesInsideOnly() {
        var circle = new Polyline(
                Layer.HATCHING.pen(),
                List.of(new Vertex(Vector2D.of(-50, 0), 1), new Vertex(Vector2D.of(50, 0), 1)),
                true);
        var lines = HatchLines.of(hatch(Material.GENERAL, circle), 1, List.of());
        assertEquals(Math.PI * 50 * 50 / 3, length(lines), 0.02 * Math.PI * 50 * 50 / 3);
        assertTrue(lines.stream()
                .allMatch(line -> line.from().norm() < 50.001 && line.to().norm() < 50.001));
    }

    @Test
    void thinParts_areFilledInsteadOfHatched() {
        var ply = hatch(Material.PLY, rectangle(0, 0, 2400, 12));
        assertTrue(ply.solid(20), "12 at 1:20 is 0.6 on paper");
        assertFalse(ply.solid(5), "12 at 1:5 is 2.4 on paper");
    }

    @Property(tries = 100)
    void dashes_coverTheirShare(
            @ForAll @DoubleRange(min = 100, max = 900) double wide,
            @ForAll @DoubleRange(min = 100, max = 900) double high) {
        law(wide, high);
    }

    /** Foam: two families 1.8 apart, dashes of 1.2 every 2.1. */
    static void law(double wide, double high) {
        var lines = HatchLines.of(hatch(Material.FOAM, rectangle(0, 0, wide, high)), 1, List.of());
        var expected = 2 * wide * high / 1.8 * 1.2 / 2.1;
        assertEquals(expected, length(lines), 0.03 * expected);
    }
}
