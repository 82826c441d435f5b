package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** How far a leg goes: a length, or {@code rest}, which is read as nothing. */
record WayForm() implements Form<Reach> {
    private static final Quantity LENGTH = Quantity.size();

    @Override
    public Optional<Reach> read(Spot spot, Scribe scribe) {
        if (spot.isText() && spot.text().equals("rest")) {
            return Optional.of(new Reach(Optional.empty()));
        }
        return LENGTH.read(spot, scribe).map(far -> new Reach(Optional.of(far)));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.anyOf(book.words(List.of("rest")), LENGTH.schema(book));
    }

    @Override
    public String words() {
        return "length, or rest";
    }
}
