package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Any words. */
record TextForm(String words) implements Form<String> {
    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where " + words + " is meant.", "Write it in one line.");
            return Optional.empty();
        }
        return Optional.of(spot.text());
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words);
    }
}
