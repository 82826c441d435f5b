package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.kernel.measure.Stack;

/**
 * What is known of a thing that wants a place.
 *
 * @param path where it stands in the file, for what is said about it
 * @param at distances from the enclosure's faces
 * @param sizes over the axes, as far as known
 * @param round the axes along which it is measured to its middle
 * @param words what its size along each axis is called in its own words
 * @param in what it is placed in
 * @param unsaid what to do along an axis without a distance
 */
record Asked(
        String path,
        List<FaceDistance> at,
        Map<Axis, Stack> sizes,
        Set<Axis> round,
        Map<Axis, String> words,
        Enclosure in,
        Unsaid unsaid) {

    /**
     * Where a thing goes that nobody placed.
     *
     * @param fills whether, without a size, it fills its enclosure
     * @param upright how high it goes
     * @param gap below what it hangs from
     * @param height on which it stands, if {@code upright} says so
     */
    record Unsaid(boolean fills, Upright upright, Stack gap, Optional<Stack> height) {
        static final Unsaid STANDS = new Unsaid(false, Upright.STANDS, Stack.ZERO, Optional.empty());
        static final Unsaid CENTRED = new Unsaid(true, Upright.CENTRED, Stack.ZERO, Optional.empty());

        static Unsaid hangs(Stack gap) {
            return new Unsaid(false, Upright.HANGS, gap, Optional.empty());
        }

        static Unsaid standsOn(Stack height) {
            return new Unsaid(false, Upright.ON, Stack.ZERO, Optional.of(height));
        }
    }

    /** How high a thing goes that nobody gave a height. */
    enum Upright {
        /** On the floor. */
        STANDS,
        /** As high as its gap allows. */
        HANGS,
        /** On a stated height. */
        ON,
        /** In the middle, or from face to face. */
        CENTRED
    }

    /** Each axis' own word: long, wide, high. */
    static Map<Axis, String> ownWords() {
        Map<Axis, String> words = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            words.put(axis, axis.size());
        }
        return words;
    }
}
