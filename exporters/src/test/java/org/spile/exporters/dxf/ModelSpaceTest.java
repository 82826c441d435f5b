package org.spile.exporters.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.StationSheets;

class ModelSpaceTest {

    @Test
    void thePlanStaysInItsPlace_otherViewsStandBelowIt() {
        var space = ModelSpace.of(StationSheets.set().sheets());
        assertEquals(3, space.views().size());
        assertEquals("plan", space.views().get(0).view().name());
        assertEquals(Vector2D.ZERO, space.views().get(0).shift());
        for (var one : space.views()) {
            for (var other : space.views()) {
                if (!one.equals(other)) {
                    assertFalse(one.window().overlaps(other.window()));
                }
            }
        }
    }

    @Test
    void scales_areListedOnce() {
        assertEquals(
                List.of(50.0, 20.0, 5.0),
                ModelSpace.of(StationSheets.set().sheets()).units());
    }
}
