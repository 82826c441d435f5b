package org.spile.exporters.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;

/** Values by hand. */
class RayTest {
    private static final Outline FLOOR = Outline.rectangle(0, 0, 100, 25);
    private static final Outline BODY = Outline.rectangle(20, 34, 80, 234);

    @Test
    void faces_upright_areTheHeightsOfEachFaceFromBelow() {
        assertEquals(List.of(0.0, 25.0, 34.0, 234.0), Ray.faces(List.of(BODY, FLOOR), Vector2D.of(50, 100), true));
    }

    @Test
    void faces_level_areThePlacesFromTheLeft() {
        assertEquals(List.of(20.0, 80.0), Ray.faces(List.of(BODY, FLOOR), Vector2D.of(50, 100), false));
    }

    @Test
    void faces_ofTouchingThings_areToldOnce() {
        assertEquals(
                List.of(0.0, 25.0, 50.0),
                Ray.faces(List.of(FLOOR, Outline.rectangle(0, 25, 100, 50)), Vector2D.of(50, 10), true));
    }

    @Test
    void faces_ofASlope_areWhereTheLineMeetsIt() {
        Outline wedge = Outline.of(List.of(Vector2D.of(0, 0), Vector2D.of(100, 0), Vector2D.of(100, 50)));

        assertEquals(List.of(0.0, 20.0), Ray.faces(List.of(wedge), Vector2D.of(40, 5), true));
    }

    @Test
    void faces_ofAHole_count() {
        Outline frame = Outline.rectangle(0, 0, 100, 100)
                .withHoles(List.of(Outline.rectangle(30, 30, 70, 70).shell()));

        assertEquals(List.of(0.0, 30.0, 70.0, 100.0), Ray.faces(List.of(frame), Vector2D.of(50, 50), false));
    }
}
