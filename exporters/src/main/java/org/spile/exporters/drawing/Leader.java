package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A name or note in its place, with a leader to what it speaks of if it could not stand on it.
 *
 * @param pen how and whose
 * @param says the words
 * @param at what it speaks of (mm)
 * @param drawn leader, dot and words
 */
public record Leader(Pen pen, String says, Vector2D at, List<Stroke> drawn) implements Mark {
    /** Copies the strokes. */
    public Leader {
        Places.check(at);
        drawn = List.copyOf(drawn);
    }

    @Override
    public List<Stroke> strokes() {
        return drawn;
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.leader(this);
    }
}
