package org.spile.geometry.file;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A line drawn in plan, in mm.
 *
 * @param layer the layer it is drawn on
 * @param corners its corners, in order
 * @param closed whether its last corner is joined to its first
 */
record PlanPath(String layer, List<Vector2D> corners, boolean closed) {
    PlanPath {
        corners = List.copyOf(corners);
    }
}
