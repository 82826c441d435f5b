package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.House;

/** What came of reading a house file and working the house out: the house, or everything that is wrong. */
public sealed interface HouseResult {

    /**
     * The house adds up.
     *
     * @param house worked out
     * @param places where the file says what
     * @param text the file's words, with the options and edits in them
     */
    record Sound(House house, Places places, String text) implements HouseResult {}

    /**
     * It can't be used until these are settled.
     *
     * @param problems at least one, in the order of the file
     */
    record Wrong(List<Problem> problems) implements HouseResult {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if it is empty
         */
        public Wrong {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a wrong house has at least one problem");
            }
        }
    }
}
