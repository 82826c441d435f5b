package org.spile.geometry.file;

import java.util.Objects;

/**
 * A key of a thing: its name, what may stand there, and what the reference page says of it.
 *
 * @param <T> what it is read as
 * @param name as typed
 * @param form what may stand there
 * @param says what it means, a phrase
 * @param asked which questions want it: letters of F A M T D
 * @param unsaid what stands in if it is left out; empty if nothing does
 * @param required whether nothing can be said of the thing without it
 */
record Key<T>(String name, Form<T> form, String says, String asked, String unsaid, boolean required) {
    Key {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(form, "form");
    }

    static <T> Key<T> of(String name, Form<T> form, String asked, String says) {
        return new Key<>(name, form, says, asked, "", false);
    }

    /** What stands in if it is left out, as the page tells it. */
    Key<T> unsaid(String words) {
        return new Key<>(name, form, says, asked, words, required);
    }

    /** This key, which can't be left out. */
    Key<T> needed() {
        return new Key<>(name, form, says, asked, unsaid, true);
    }
}
