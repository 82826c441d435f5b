package org.spile.exporters.command;

import java.util.Objects;

/**
 * Why a command can't go on with what it was given: the user's matter, told in one line, and what to do about it.
 *
 * @param error one line: what is wrong, with the words or the path it is about
 * @param hint one line: what to do
 */
record Refusal(String error, String hint) {
    Refusal {
        Objects.requireNonNull(error, "error");
        Objects.requireNonNull(hint, "hint");
    }
}
