package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A corner of a polyline and how the line goes on from it.
 *
 * @param at place (mm)
 * @param bulge tangent of a quarter of the angle swept to the next corner, positive counter-clockwise; 0 for a straight
 *     piece, 1 for a half circle
 */
public record Vertex(Vector2D at, double bulge) {
    /** Refuses numbers that are no places. */
    public Vertex {
        Places.check(at);
        if (!Double.isFinite(bulge)) {
            throw new IllegalArgumentException("bulge " + bulge + " is not a number");
        }
    }

    /** A corner from which the line goes on straight. */
    public static Vertex of(double x, double y) {
        return new Vertex(Vector2D.of(x, y), 0);
    }

    /** Corners joined by straight pieces. */
    public static List<Vertex> straight(List<Vector2D> corners) {
        return corners.stream().map(at -> new Vertex(at, 0)).toList();
    }
}
