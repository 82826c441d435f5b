package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class ArcTest {
    /** Half a circle on the chord from (0,0) to (2,0): bulge 1 goes counter-clockwise, so below the chord. */
    @Test
    void bulge_worked() {
        Arc arc = Arc.bulged(Vector2D.ZERO, Vector2D.of(200, 0), 1);
        assertEquals(100, arc.radius(), 1e-12);
        assertEquals(100, arc.centre().getX(), 1e-12);
        assertEquals(0, arc.centre().getY(), 1e-12);
        assertTrue(arc.between().stream().allMatch(point -> point.getY() < 0));
        assertTrue(Arc.bulged(Vector2D.ZERO, Vector2D.of(200, 0), -1).between().stream()
                .allMatch(point -> point.getY() > 0));
    }

    @Property
    void corners_lieOnTheArcAndChordsLeaveItByLittle(
            @ForAll @DoubleRange(min = 1, max = 5000) double chord,
            @ForAll @DoubleRange(min = -5, max = 5) double bulge,
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
        if (Math.abs(bulge) > 1e-6) {
            law(chord, bulge, turn);
        }
    }

    private static void law(double chord, double bulge, double turn) {
        Vector2D from = Vector2D.of(123, -45);
        Vector2D to = from.add(Vector2D.of(chord * Math.cos(turn), chord * Math.sin(turn)));
        Arc arc = Arc.bulged(from, to, bulge);
        double close = 1e-9 * (1 + arc.radius());
        assertTrue(arc.start().distance(from) < close, "starts at " + arc.start());
        assertTrue(arc.end().distance(to) < close, "ends at " + arc.end());
        List<Vector2D> points = new ArrayList<>(List.of(from));
        points.addAll(arc.between());
        points.add(to);
        for (int i = 1; i < points.size(); i++) {
            assertEquals(arc.radius(), points.get(i).distance(arc.centre()), close);
            Vector2D middle = points.get(i).add(points.get(i - 1)).multiply(0.5);
            double sagitta = arc.radius() - middle.distance(arc.centre());
            boolean half = arc.between().isEmpty() && Math.abs(bulge) >= 1;
            double leaves = half ? 0 : sagitta;
            assertTrue(leaves <= Arc.SAGITTA_MM + close, "leaves the arc by " + leaves);
        }
    }
}
