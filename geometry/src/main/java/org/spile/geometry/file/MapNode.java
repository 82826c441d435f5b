package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;

/**
 * Keys with their values.
 *
 * @param place where it begins
 * @param span its characters
 * @param flow whether it was written between braces
 * @param entries its keys and values, in the order written, each key once
 */
record MapNode(Place place, Span span, boolean flow, List<Entry> entries) implements Node {
    /**
     * A key and its value.
     *
     * @param key the key as written
     * @param value the value, possibly missing
     */
    record Entry(TextNode key, Node value) {
        String name() {
            return key.text();
        }
    }

    MapNode {
        entries = List.copyOf(entries);
    }

    /** The entry of a key. */
    Optional<Entry> entry(String name) {
        return entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    /** The value of a key. */
    Optional<Node> value(String name) {
        return entry(name).map(Entry::value);
    }

    /** The keys, in the order written. */
    List<String> names() {
        return entries.stream().map(Entry::name).toList();
    }

    /** The order of the keys counts for nothing. */
    @Override
    public boolean sameAs(Node other) {
        if (!(other instanceof MapNode that) || entries.size() != that.entries.size()) {
            return false;
        }
        return entries.stream()
                .allMatch(entry ->
                        that.value(entry.name()).filter(entry.value()::sameAs).isPresent());
    }
}
