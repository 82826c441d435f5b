package org.spile.exporters.drawing.layout;

import java.util.List;
import org.spile.exporters.drawing.Sheet;

/** What came of laying out a sheet. */
public sealed interface Laid {
    /**
     * Everything found its place.
     *
     * @param sheet the sheet, number 1 of 1
     */
    record Fits(Sheet sheet) implements Laid {}

    /**
     * Not everything fits on the paper that was allowed, at a scale of use.
     *
     * @param because one plain sentence
     * @param alternatives what would help, each in words
     */
    record TooLarge(String because, List<String> alternatives) implements Laid {
        /** Copies the alternatives. */
        public TooLarge {
            alternatives = List.copyOf(alternatives);
        }
    }
}
