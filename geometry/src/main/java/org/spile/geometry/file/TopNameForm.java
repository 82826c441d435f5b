package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * The name of an entry of another section, such as a stance.
 *
 * @param section the section
 * @param not keys of it that name nothing
 */
record TopNameForm(String section, List<String> not) implements Form<String> {
    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        List<String> names = scribe.root().child(section).stream()
                .flatMap(entries -> entries.entries().stream())
                .map(Spot.Entry::key)
                .filter(key -> !not.contains(key))
                .toList();
        if (spot.isText() && names.contains(spot.text())) {
            return Optional.of(spot.text());
        }
        String nearest = NearestName.of(spot.text(), names)
                .map(name -> "Nearest: \"" + name + "\".")
                .orElse(names.isEmpty() ? "There are none." : "There are " + Phrases.and(names) + ".");
        scribe.wrong(spot, "there is no " + spot.found() + " under " + section + ".", nearest);
        return Optional.empty();
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words());
    }

    @Override
    public String words() {
        return "a name under " + section;
    }
}
