package org.spile.geometry.file;

import java.util.Objects;

/**
 * One change of a house file: a path and what to write there.
 *
 * @param path where, {@code cavities.lobby-top.ceiling.drop}
 * @param value what, as it would be typed: a value, or a whole thing in braces or brackets
 */
public record Edit(String path, String value) {

    /** Checks that both are given. */
    public Edit {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(value, "value");
    }

    /**
     * The edit that words such as {@code units.cooler.high=205} ask for, split at the first {@code =}.
     *
     * <p>Words without one are an edit without a value, which {@link Edits#apply} refuses with a problem.
     */
    public static Edit of(String words) {
        int split = words.indexOf('=');
        return split < 0
                ? new Edit(words.strip(), "")
                : new Edit(
                        words.substring(0, split).strip(),
                        words.substring(split + 1).strip());
    }

    /** {@code PATH=VALUE}. */
    @Override
    public String toString() {
        return path + "=" + value;
    }
}
