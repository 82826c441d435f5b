package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Things by their names, in the order of the file.
 *
 * @param names what the keys are
 * @param each what stands at each
 * @param <T> what each is read as
 */
record NamedForm<T>(KeyNames names, Form<T> each) implements Form<Map<String, T>> {

    /** Named as the writer likes. */
    static <T> NamedForm<T> free(Form<T> each) {
        return new NamedForm<>(KeyNames.free(), each);
    }

    @Override
    public Optional<Map<String, T>> read(Spot spot, Scribe scribe) {
        if (!spot.isMap() && !spot.isNothing()) {
            scribe.wrong(
                    spot,
                    spot.found() + " stands where " + names.words() + " with " + each.words() + " each is meant.",
                    "Write {" + names.sample() + ": ...}.");
            return Optional.empty();
        }
        var read = new LinkedHashMap<String, T>();
        for (Spot.Entry entry : spot.entries()) {
            if (names.check(spot, entry, scribe)) {
                each.read(entry.value(), scribe).ifPresent(value -> read.put(entry.key(), value));
            }
        }
        return Optional.of(Collections.unmodifiableMap(read));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return names.schema(book, each.schema(book));
    }

    @Override
    public String words() {
        return "by " + names.words() + ": " + each.words();
    }

    @Override
    public String linked() {
        return "by " + names.words() + ": " + each.linked();
    }

    @Override
    public List<Shape<?>> shapes() {
        return each.shapes();
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return names.fixed().isEmpty() || names.fixed().contains(step) ? Optional.of(each) : Optional.empty();
    }

    @Override
    public List<String> keys() {
        return names.fixed();
    }
}
