package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The name of another thing of the file.
 *
 * @param sections the sections that it may stand in
 * @param wordsToo words that may stand instead
 */
record NameForm(Set<String> sections, List<String> wordsToo) implements Form<String> {
    static NameForm of(String... sections) {
        return new NameForm(Set.of(sections), List.of());
    }

    NameForm or(String... others) {
        return new NameForm(sections, List.of(others));
    }

    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where " + words() + " is meant.", "Write its name alone.");
            return Optional.empty();
        }
        if (wordsToo.contains(spot.text())) {
            return Optional.of(spot.text());
        }
        return known(spot, spot.text(), scribe);
    }

    /** The name, if a thing of these sections bears it; else told, with the nearest. */
    Optional<String> known(Spot spot, String name, Scribe scribe) {
        Optional<Names.Named> named = scribe.names().named(name);
        if (named.isEmpty()) {
            String nearest = scribe.names().nearest(name, sections);
            scribe.wrong(spot, "there is no \"" + name + "\".", nearest.isEmpty() ? "It is " + words() + "." : nearest);
            return Optional.empty();
        }
        if (!sections.contains(named.get().section())) {
            scribe.wrong(spot, "\"" + name + "\" is " + named.get().noun() + ".", "Here stands " + words() + ".");
            return Optional.empty();
        }
        return Optional.of(name);
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words());
    }

    @Override
    public String words() {
        var nouns = new TreeSet<String>();
        for (String section : sections) {
            nouns.add(new Names.Named(section, null).noun());
        }
        nouns.addAll(wordsToo);
        return "the name of " + Phrases.or(List.copyOf(nouns));
    }
}
