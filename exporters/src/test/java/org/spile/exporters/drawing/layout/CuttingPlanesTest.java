package org.spile.exporters.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Text;

/** How far out the letters stand; distances are on paper, at 1:50. */
class CuttingPlanesTest {
    private static final double UNIT = 50;
    /** End, wide end and run: 9; then the letter's middle 4.5 further. Our own layout, no standard. */
    private static final double FIRST = 13.5;

    @Test
    void planesFarApart_allStandAtTheView() {
        assertEquals(Map.of("A", FIRST, "B", FIRST), out(plane("A", 0), plane("B", 600)));
    }

    @Test
    void planesThatWouldLieOnEachOther_standInSteps_theForemostNearest() {
        // 120, 160 and 520 model mm are 2.4, 3.2 and 10.4 mm of paper: only the last leaves room for a head of 10.
        assertEquals(
                Map.of("D", FIRST + 19, "A", FIRST + 9.5, "B", FIRST, "C", FIRST),
                out(plane("D", 420), plane("A", 580), plane("B", 700), plane("C", 1220)));
    }

    @Test
    void otherDirections_dontCount() {
        var level = new CuttingPlane("E", Vector2D.of(0, 710), Vector2D.of(3000, 710), Side.ABOVE);
        assertEquals(Map.of("B", FIRST, "E", FIRST), out(plane("B", 700), level));
    }

    private static CuttingPlane plane(String letter, double x) {
        return new CuttingPlane(letter, Vector2D.of(x, 0), Vector2D.of(x, 2000), Side.RIGHT);
    }

    /** Each letter's distance from the view's lower or left edge, the same whatever order they come in. */
    private static Map<String, Double> out(CuttingPlane... planes) {
        List<CuttingPlane> given = new ArrayList<>(List.of(planes));
        Map<String, Double> out = letters(given);
        Collections.reverse(given);
        assertEquals(out, letters(given));
        return out;
    }

    private static Map<String, Double> letters(List<CuttingPlane> planes) {
        Map<String, Double> out = new TreeMap<>();
        new CuttingPlanes(planes)
                .strokes(UNIT).stream()
                        .filter(Text.class::isInstance)
                        .map(Text.class::cast)
                        .forEach(text -> out.merge(
                                text.says(),
                                -Math.min(text.at().getX(), text.at().getY()) / UNIT,
                                Math::max));
        return out;
    }
}
