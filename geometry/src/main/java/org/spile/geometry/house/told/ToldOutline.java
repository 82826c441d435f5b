package org.spile.geometry.house.told;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A plan outline, typed or taken from a drawing: corners as (forward, left) from the container's rear right corner, or,
 * for a trailer's deck, from the rear right corner of the outline's own bounds (mm).
 *
 * @param path where it was typed
 * @param corners at least three; the ring is closed by itself
 * @param source the drawing's file name, or empty if typed
 */
public record ToldOutline(String path, List<Vector2D> corners, String source) {
    /** Copies the corners. */
    public ToldOutline {
        corners = List.copyOf(corners);
    }
}
