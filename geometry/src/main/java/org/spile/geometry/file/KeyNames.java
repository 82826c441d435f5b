package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the keys of a map of things are: free names, the names of things of some sections, or some fixed words.
 *
 * @param sections things that must exist; empty: none need to
 * @param fixed words that it must be; empty: free
 * @param what what they are, for a message
 */
record KeyNames(Set<String> sections, List<String> fixed, String what) {
    /** How an id is spelt. */
    static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]*");

    static KeyNames free() {
        return new KeyNames(Set.of(), List.of(), "name");
    }

    static KeyNames things(String what, String... sections) {
        return new KeyNames(Set.of(sections), List.of(), what);
    }

    static KeyNames fixed(String what, List<String> words) {
        return new KeyNames(Set.of(), words, what);
    }

    /** Whether a key will do; if not, it is told. */
    boolean check(Spot map, Spot.Entry entry, Scribe scribe) {
        if (!fixed.isEmpty()) {
            int before = scribe.count();
            new UnknownKeys((key, value) -> "", fixed).check(map.withEntries(List.of(entry)), scribe);
            return scribe.count() == before;
        }
        if (!sections.isEmpty()) {
            return new NameForm(sections, List.of())
                    .known(keySpot(entry), entry.key(), scribe)
                    .isPresent();
        }
        return Ids.spelt(map, entry, scribe);
    }

    private static Spot keySpot(Spot.Entry entry) {
        Spot value = entry.value();
        return new Spot(
                value.path(),
                entry.keyPlace(),
                Spot.What.TEXT,
                entry.key(),
                true,
                List.of(),
                List.of(),
                value.copied());
    }

    ObjectNode schema(SchemaBook book, ObjectNode each) {
        return fixed.isEmpty() ? book.named(each) : book.fixed(fixed, each);
    }

    String words() {
        return fixed.isEmpty() ? what : Phrases.or(fixed);
    }

    String sample() {
        return fixed.isEmpty() ? what : fixed.get(0);
    }
}
