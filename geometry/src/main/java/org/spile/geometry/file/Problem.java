package org.spile.geometry.file;

import java.util.Objects;

/**
 * Something in a file that must be put right, or a doubt that must be settled, before the file is used.
 *
 * @param place where
 * @param path the file's own words for where, {@code units.cooler.high}; empty if it has none
 * @param says what is wrong, with the words found
 * @param advice what to write instead; empty if {@code says} is all there is to say
 * @param doubt whether it is a question rather than an error
 */
public record Problem(Place place, String path, String says, String advice, boolean doubt) {

    /** Checks that all parts are given. */
    public Problem {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(says, "says");
        Objects.requireNonNull(advice, "advice");
    }

    /** An error. */
    public static Problem error(Place place, String path, String says, String advice) {
        return new Problem(place, path, says, advice, false);
    }

    /** A question. */
    public static Problem doubt(Place place, String path, String says, String advice) {
        return new Problem(place, path, says, advice, true);
    }

    /** The section and name that the path begins with, as {@code runs.lab-supply}; a shorter path whole. */
    private String thing() {
        int end = path.indexOf('.', path.indexOf('.') + 1);
        return end < 0 ? path : path.substring(0, end);
    }

    /**
     * One line: place, path, what is wrong, what to write.
     *
     * <p>A sentence that begins with the path itself, or with the thing that the path lies in, is not given it twice.
     */
    @Override
    public String toString() {
        String named = path.isEmpty() || says.startsWith(thing()) ? says : path + ": " + says;
        return place + ": " + named + (advice.isEmpty() ? "" : " " + advice);
    }
}
