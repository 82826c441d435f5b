package org.spile.exporters.drawing.layout;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A name or note asked for; the layout puts it on the place it speaks of if there is room, else beside it on a leader.
 *
 * @param says one or more lines
 * @param at what it speaks of (model mm)
 * @param capMm height of the capitals on paper
 * @param part path of the thing named; empty if none
 */
public record Label(List<String> says, Vector2D at, double capMm, String part) {
    /** Copies the lines. */
    public Label {
        says = List.copyOf(says);
        if (says.isEmpty()) {
            throw new IllegalArgumentException("a label needs words");
        }
    }
}
