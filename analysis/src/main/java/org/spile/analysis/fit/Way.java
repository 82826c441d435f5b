package org.spile.analysis.fit;

import java.util.Map;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Travels.Mover;

/**
 * A mover's way in a stance, and what came of it.
 *
 * @param others where every mover stands meanwhile
 * @param from the end of the way that is nearer to shut
 * @param to its other end
 */
record Way(Mover mover, String stance, Map<String, Double> others, double from, double to, Answer answer) {
    /** Goes a way. */
    static Way of(
            House house,
            String stance,
            Map<String, Double> others,
            Mover mover,
            double from,
            double to,
            String check,
            String once) {
        Answer answer = Journey.ofMover(house, stance, others, mover, from, to).worst(check, once);
        return new Way(mover, stance, others, from, to, answer);
    }

    /** The same in another house, or to another end. */
    Way again(House house, double otherTo) {
        return of(house, stance, others, mover, from, otherTo, answer.question().check(), "");
    }
}
