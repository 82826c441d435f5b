package org.spile.geometry.kernel.measure;

import java.util.Objects;
import java.util.Optional;

/**
 * Why words could not be read as the quantity asked for.
 *
 * @param reason the kind of fault, so that a reader that knows more can say more
 * @param words the words found
 * @param says what is wrong, one sentence with the words in it
 * @param expected the form that would do, one or two sentences
 * @param nearestWord the unit or word probably meant; empty if none is near
 */
public record Refusal(Reason reason, String words, String says, String expected, String nearestWord) {

    /** The kinds of fault. */
    public enum Reason {
        EMPTY,
        NO_NUMBER,
        NO_UNIT,
        UNKNOWN_UNIT,
        WRONG_UNIT,
        SURPLUS,
        COMMA,
        EXPONENT,
        NOT_FINITE,
        SIGN,
        NOTHING,
        TOO_LARGE,
        TOLERANCE,
        PAIR,
        FEET_AND_INCHES,
        OUT
    }

    /** Checks that all parts are given. */
    public Refusal {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(says, "says");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(nearestWord, "nearestWord");
    }

    /** The unit or word probably meant. */
    public Optional<String> nearest() {
        return nearestWord.isEmpty() ? Optional.empty() : Optional.of(nearestWord);
    }

    /** What to write: the expected form, with the nearest word if there is one. */
    public String advice() {
        return nearestWord.isEmpty() ? expected : "Nearest: \"" + nearestWord + "\". " + expected;
    }

    @Override
    public String toString() {
        return says + " " + advice();
    }
}
