package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * A question about a bare number that is likelier in another unit.
 *
 * @param words the number as written
 * @param says why it is doubtful, one sentence
 * @param advice what to write either way, one sentence
 */
public record Doubt(String words, String says, String advice) {

    /** Checks that all parts are given. */
    public Doubt {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(says, "says");
        Objects.requireNonNull(advice, "advice");
    }
}
