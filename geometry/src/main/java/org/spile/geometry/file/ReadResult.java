package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldHouse;

/** What came of reading a house file: the house as told, or everything that is wrong with it. */
public sealed interface ReadResult {

    /**
     * Nothing is wrong with it.
     *
     * @param house what it says
     * @param places where it says it
     * @param text its words, with the options and edits in them
     */
    record Sound(ToldHouse house, Places places, String text) implements ReadResult {}

    /**
     * It can't be used until these are settled.
     *
     * @param problems at least one, in the order of the file
     */
    record Wrong(List<Problem> problems) implements ReadResult {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if it is empty
         */
        public Wrong {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a wrong file has at least one problem");
            }
        }
    }
}
