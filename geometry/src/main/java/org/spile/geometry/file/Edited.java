package org.spile.geometry.file;

import java.util.List;
import java.util.Objects;

/** What came of editing a text. */
public sealed interface Edited {
    /**
     * Every edit was applied.
     *
     * @param text the new text
     */
    record Done(String text) implements Edited {
        /** Checks that there is a text. */
        public Done {
            Objects.requireNonNull(text, "text");
        }
    }

    /**
     * An edit could not be applied, or the text was unusable before; nothing is changed.
     *
     * @param problems why, at least one
     */
    record Undone(List<Problem> problems) implements Edited {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if it is empty
         */
        public Undone {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("what is undone has a problem");
            }
        }
    }
}
