package org.spile.exporters.drawing.layout;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Running dimensions asked for: one line, its datum marked by a circle, each value at its extension line. Best for rows
 * of openings or screws along a wall.
 *
 * @param datum where measuring starts (model mm)
 * @param features what is measured to (model mm), in any order
 * @param side which side of the view
 * @param part path of the thing measured; empty if none
 */
public record RunningDimension(Vector2D datum, List<Vector2D> features, Side side, String part) {
    /** Copies the features. */
    public RunningDimension {
        features = List.copyOf(features);
        if (features.isEmpty()) {
            throw new IllegalArgumentException("running dimensions need a feature to measure to");
        }
    }

    /** Running dimensions of no thing in particular. */
    public static RunningDimension from(Vector2D datum, List<Vector2D> features, Side side) {
        return new RunningDimension(datum, features, side, "");
    }
}
