package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** An edit, {@code PATH=VALUE}, kept as text. */
record EditForm() implements Form<String> {
    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        if (!spot.isText() || spot.text().indexOf('=') < 1) {
            scribe.wrong(
                    spot,
                    spot.found() + " stands where an edit is meant.",
                    "Write PATH=VALUE, as cavities.loft.ceiling.drop=16.5; a value with braces in quotes.");
            return Optional.empty();
        }
        int equals = spot.text().indexOf('=');
        Optional<Vocabulary.Fault> fault = new Vocabulary(scribe.root())
                .fault(spot.text().substring(0, equals).strip());
        fault.ifPresent(found -> scribe.wrong(spot, found.says(), found.advice()));
        return fault.isPresent() ? Optional.empty() : Optional.of(spot.text());
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text("PATH=VALUE").put("pattern", "^[^=]+=");
    }

    @Override
    public String words() {
        return "PATH=VALUE";
    }
}
