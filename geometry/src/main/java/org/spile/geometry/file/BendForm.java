package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Reading;

/** How a corner is made: {@code radius}, {@code radius 80}, {@code mitred} or {@code vanes}. */
record BendForm() implements Form<Bend> {
    private static final List<String> WORDS = List.of("radius", "mitred", "vanes");

    @Override
    public Optional<Bend> read(Spot spot, Scribe scribe) {
        String text = spot.text();
        if (!spot.isText() || !text.startsWith("radius ")) {
            return new WordForm(WORDS).read(spot, scribe).map(kind -> new Bend(kind, Optional.empty()));
        }
        Parse<Reading> parse = scribe.quantities().reading(text.substring("radius ".length()), Ask.size());
        parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
        return parse.value().map(radius -> new Bend("radius", Optional.of(radius.withPath(spot.path()))));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.anyOf(book.words(WORDS), book.text("radius 80").put("pattern", "^radius .+"));
    }

    @Override
    public String words() {
        return "radius, radius 80, mitred or vanes";
    }
}
