package org.spile.exporters.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Closed forms: bulge = tan(sweep / 4), half circle 1, quarter circle tan(22.5°) = 0.41421356. */
class BendTest {

    @Test
    void quarterCircle_fromItsBulge() {
        var bend = Bend.between(new Vertex(Vector2D.of(100, 0), 0.41421356237), Vector2D.of(0, 100))
                .orElseThrow();
        assertEquals(100, bend.radiusMm(), 1e-6);
        assertEquals(Math.PI / 2, bend.sweepRad(), 1e-9);
        assertEquals(0, bend.centre().norm(), 1e-6);
    }

    @Test
    void halfCircle_clockwiseWithNegativeBulge() {
        var bend = Bend.between(new Vertex(Vector2D.of(0, 0), -1), Vector2D.of(10, 0))
                .orElseThrow();
        assertEquals(5, bend.radiusMm(), 1e-9);
        assertEquals(5, bend.at(0.5).getY(), 1e-9);
    }

    @Property(tries = 200)
    void middle_risesHalfChordTimesBulge(
            @ForAll @DoubleRange(min = -3, max = 3) double bulge,
            @ForAll @DoubleRange(min = 1, max = 1e4) double chord) {
        law(bulge, chord);
    }

    /** The sagitta of an arc is its chord × |bulge| / 2, and the chord of a flattened arc strays no farther than asked. */
    static void law(double bulge, double chord) {
        if (Math.abs(bulge) < 1e-6) {
            return;
        }
        var from = new Vertex(Vector2D.of(0, 0), bulge);
        var bend = Bend.between(from, Vector2D.of(chord, 0)).orElseThrow();
        assertEquals(-chord * bulge / 2, bend.at(0.5).getY(), 1e-6 * chord);
        var line = new Polyline(Layer.DUCTS.pen(), List.of(from, Vertex.of(chord, 0)), false).flattened(0.5);
        for (var i = 1; i < line.size(); i++) {
            var middle = line.get(i - 1).lerp(line.get(i), 0.5);
            var off = Math.abs(bend.radiusMm() - middle.distance(bend.centre()));
            assertTrue(off <= 0.5 + 1e-6 * bend.radiusMm(), "strays " + off);
        }
    }
}
