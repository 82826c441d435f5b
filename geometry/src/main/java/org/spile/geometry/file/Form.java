package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * What may stand at a place of the house file. The one definition from which that place is read, its JSON Schema is
 * written and the reference page describes it.
 *
 * @param <T> what it is read as
 */
interface Form<T> {
    /** Reads what stands there; whatever is wrong goes to the scribe, and then there may be nothing. */
    Optional<T> read(Spot spot, Scribe scribe);

    /** The JSON Schema of what may stand there, as a YAML reader of the 1.2 core schema sees it. */
    ObjectNode schema(SchemaBook book);

    /** What may stand there, in a few words for a table: {@code length}, {@code list of ids}. */
    String words();

    /** The same, with links to the tables of things. */
    default String linked() {
        return words();
    }

    /** The things whose definitions it rests on. */
    default List<Shape<?>> shapes() {
        return List.of();
    }

    /** What may stand one step further down a path, at a key or at {@code [1]}. */
    default Optional<Form<?>> under(String step) {
        return Optional.empty();
    }

    /** The keys that may stand below it, so far as they are fixed. */
    default List<String> keys() {
        return List.of();
    }
}
