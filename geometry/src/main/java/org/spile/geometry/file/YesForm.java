package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** {@code yes} or {@code no}, also as other YAML readers hand them on. */
record YesForm() implements Form<Boolean> {
    private static final WordForm WORDS = WordForm.of("yes", "no", "true", "false");

    @Override
    public Optional<Boolean> read(Spot spot, Scribe scribe) {
        return WORDS.read(spot, scribe).map(word -> word.equals("yes") || word.equals("true"));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return WORDS.schema(book);
    }

    @Override
    public String words() {
        return "yes or no";
    }
}
