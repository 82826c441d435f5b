package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;

/**
 * Something that slides or swings.
 *
 * @param slides its slides, if it slides
 * @param rides the mover that carries it; empty if none
 */
public record ToldMover(Placed placed, List<ToldSlide> slides, Optional<ToldHinge> hinge, String rides) {
    /** Copies the list. */
    public ToldMover {
        slides = List.copyOf(slides);
    }
}
