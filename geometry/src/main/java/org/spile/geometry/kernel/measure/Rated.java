package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * One quantity at another, {@code 120 L/s at 30 Pa}.
 *
 * @param what the quantity before {@code at}
 * @param at the quantity after it
 */
public record Rated(Reading what, Reading at) {

    /** Checks that both are given. */
    public Rated {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(at, "at");
    }

    /** This point typed at a path: its two readings get {@code [1]} and {@code [2]} behind it. */
    public Rated withPath(String path) {
        return new Rated(what.withPath(path + "[1]"), at.withPath(path + "[2]"));
    }
}
