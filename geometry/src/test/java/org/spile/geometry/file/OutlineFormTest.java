package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlineFormTest {
    private static String cavity(String outline) {
        return "cavities:\n  loft: {high: 262, outline: " + outline + "}\n";
    }

    @Test
    void corners_inOrder() {
        var corners = Houses.sound(cavity("[[0, 0], [700, 0], [700, 420], [0, 300]]"))
                .cavities()
                .get("loft")
                .placed()
                .sizes()
                .outline()
                .orElseThrow()
                .corners();
        assertEquals(4, corners.size());
        assertEquals(420, corners.get(2).getY());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "[[0, 0], [700, 420], [700, 0], [0, 300]];"
                        + " the outline crosses itself: side 1-2 meets side 3-4. Give the corners in order, all the way round.",
                "[[0, 0], [700, 0], [700, 420], [0, 0]];"
                        + " corners 4 and 1 are at one place, [0, 0]. The last corner joins the first by itself: leave it out.",
                "[[0, 0], [700, 0], [700, 0], [0, 300]]; corners 2 and 3 are at one place, [700, 0]. Leave one out.",
                "[[0, 0], [700, 0], [300, 0], [300, 300]];"
                        + " the outline crosses itself: side 1-2 meets side 2-3. Give the corners in order, all the way round.",
                "[[0, 0], [700, 0], [700, 400], [350, 0], [0, 400]];"
                        + " the outline crosses itself: side 1-2 meets side 3-4. Give the corners in order, all the way round.",
            })
    void unsound_told(String outline, String told) {
        List<String> wrong = Houses.wrong(cavity(outline));
        assertEquals(List.of("house.yaml:2:30: cavities.loft.outline: " + told), wrong);
    }

    @Test
    void twoCorners_noOutline() {
        assertEquals(
                List.of(
                        "house.yaml:2:30: cavities.loft.outline: 2 corners are no outline. Write at least three corners,"
                                + " [[0, 0], [700, 0], [700, 420]]; or {from: plan.dxf, layer: NAME}."),
                Houses.wrong(cavity("[[0, 0], [700, 0]]")));
    }

    @Test
    void outlineAndSize_oneTooMany() {
        assertEquals(
                List.of("house.yaml:2:9: cavities.loft has an outline and \"wide\" too."
                        + " The outline is its plan: leave the other out."),
                Houses.wrong("cavities:\n  loft: {high: 262, wide: 400, outline: [[0, 0], [700, 0], [700, 420]]}\n"));
    }
}
