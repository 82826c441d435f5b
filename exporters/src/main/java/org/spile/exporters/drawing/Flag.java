package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A finding on the drawing: its gap between two witness points, and a numbered flag.
 *
 * @param pen how and whose
 * @param number the flag's number, as the sheet's list of findings has it
 * @param finding the finding's id
 * @param at first witness point (mm)
 * @param to second witness point (mm)
 * @param drawn gap, leader, flag and number
 */
public record Flag(Pen pen, int number, String finding, Vector2D at, Vector2D to, List<Stroke> drawn) implements Mark {
    /** Copies the strokes. */
    public Flag {
        Places.check(at);
        Places.check(to);
        drawn = List.copyOf(drawn);
    }

    @Override
    public List<Stroke> strokes() {
        return drawn;
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.flag(this);
    }
}
