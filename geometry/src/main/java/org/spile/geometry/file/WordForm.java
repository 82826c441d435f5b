package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/** One of some fixed words. */
record WordForm(List<String> allowed) implements Form<String> {
    static WordForm of(String... allowed) {
        return new WordForm(List.of(allowed));
    }

    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        if (spot.isText() && allowed.contains(spot.text())) {
            return Optional.of(spot.text());
        }
        scribe.wrong(
                spot,
                spot.found() + " isn't one of its words.",
                NearestName.of(spot.text(), allowed)
                                .map(word -> "Nearest: \"" + word + "\". ")
                                .orElse("") + "It is " + words() + ".");
        return Optional.empty();
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.words(allowed);
    }

    @Override
    public String words() {
        return Phrases.or(allowed);
    }
}
