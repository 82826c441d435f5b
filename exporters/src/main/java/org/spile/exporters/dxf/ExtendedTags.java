package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.Map;

/** What a thing is in the house file, kept with its entity for the way back: invisible, and copied with it. */
final class ExtendedTags {
    /** Longest string the format takes. */
    private static final int MOST = 250;

    private ExtendedTags() {}

    /**
     * Writes it; nothing if there is nothing.
     *
     * @param values written as {@code key=value}, in the map's order
     */
    static void of(TagWriter tags, Map<String, String> values) throws IOException {
        if (values.isEmpty()) {
            return;
        }
        tags.put(1001, Names.APP);
        for (var value : values.entrySet()) {
            var words = value.getKey() + "=" + value.getValue();
            tags.words(1000, words.length() <= MOST ? words : words.substring(0, MOST));
        }
    }
}
