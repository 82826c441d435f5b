package org.spile.geometry.kernel.measure;

import java.util.Optional;

/** Where a number comes from. Findings name the assumed ones they rest on. */
public enum Origin {
    /** Typed without a word about its origin. */
    TYPED(""),
    /** Taken off the real thing with a tape or gauge. */
    MEASURED("measured"),
    /** A guess its writer owns up to. */
    ASSUMED("assumed"),
    /** Printed by the maker of the thing. */
    MAKER("maker"),
    /** Not typed at all: a stated default stood in. */
    DEFAULT("");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /** The word written behind a number; empty for the two that are not written. */
    public String word() {
        return word;
    }

    /** The origin that a word behind a number names, if it names one. */
    public static Optional<Origin> named(String word) {
        for (Origin origin : values()) {
            if (!origin.word.isEmpty() && origin.word.equals(word)) {
                return Optional.of(origin);
            }
        }
        return Optional.empty();
    }
}
