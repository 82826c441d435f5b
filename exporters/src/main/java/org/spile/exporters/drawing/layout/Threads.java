package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;

/** Extension lines and leaders that must pass texts: interrupted there, as ISO 129-1 allows, so that no text is crossed. */
final class Threads {
    /** Room left on either side of a text (mm on paper). */
    private static final double ROOM_MM = 0.5;

    private Threads() {}

    /**
     * A line with gaps where texts stand.
     *
     * @param pen how
     * @param from start
     * @param to end
     * @param ground what stands where
     * @param unitsPerMm drawing units for one millimetre on paper
     * @return the pieces, in order; none if a text covers it all
     */
    static List<Line> broken(Pen pen, Vector2D from, Vector2D to, Ground ground, double unitsPerMm) {
        var room = ROOM_MM * unitsPerMm;
        List<double[]> pieces = new ArrayList<>(List.of(new double[] {0, 1}));
        for (var text : ground.near(Ground.Kind.TEXT, Patch.of(from, to), room)) {
            var inside = text.boxGrown(room).inside(from, to);
            if (inside.isPresent()) {
                pieces = without(pieces, inside.get().first(), inside.get().last());
            }
        }
        var way = to.subtract(from);
        var least = 0.5 * unitsPerMm / Math.max(way.norm(), 1e-9);
        return pieces.stream()
                .filter(piece -> piece[1] - piece[0] > least)
                .map(piece -> new Line(pen, from.add(way.multiply(piece[0])), from.add(way.multiply(piece[1]))))
                .toList();
    }

    private static List<double[]> without(List<double[]> pieces, double first, double last) {
        var left = new ArrayList<double[]>();
        for (var piece : pieces) {
            if (first > piece[0]) {
                left.add(new double[] {piece[0], Math.min(first, piece[1])});
            }
            if (last < piece[1]) {
                left.add(new double[] {Math.max(last, piece[0]), piece[1]});
            }
        }
        left.removeIf(piece -> piece[1] <= piece[0]);
        return left;
    }
}
