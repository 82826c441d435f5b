package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Several of a kind, in their order.
 *
 * @param item what each is
 * @param orOne whether one may stand alone, without brackets
 * @param least how many there must be
 * @param <T> what each is read as
 */
record ListForm<T>(Form<T> item, boolean orOne, int least) implements Form<List<T>> {
    static <T> ListForm<T> of(Form<T> item) {
        return new ListForm<>(item, false, 0);
    }

    static <T> ListForm<T> orOne(Form<T> item) {
        return new ListForm<>(item, true, 1);
    }

    ListForm<T> atLeast(int number) {
        return new ListForm<>(item, orOne, number);
    }

    @Override
    public Optional<List<T>> read(Spot spot, Scribe scribe) {
        if (orOne && !spot.isList()) {
            return item.read(spot, scribe).map(List::of);
        }
        if (!spot.isList()) {
            scribe.wrong(spot, spot.found() + " stands where a list is meant.", "Write [" + item.words() + ", ...].");
            return Optional.empty();
        }
        if (spot.items().size() < least) {
            scribe.wrong(
                    spot,
                    "the list has " + spot.items().size() + " of at least " + least + ".",
                    "Each is " + item.words() + ".");
            return Optional.empty();
        }
        var items = new ArrayList<T>();
        for (Spot each : spot.items()) {
            item.read(each, scribe).ifPresent(items::add);
        }
        return Optional.of(List.copyOf(items));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.list(item.schema(book), orOne, least);
    }

    @Override
    public String words() {
        return orOne ? item.words() + ", or a list of such" : "list: " + item.words();
    }

    @Override
    public String linked() {
        return orOne ? item.linked() + ", or a list of such" : "list: " + item.linked();
    }

    @Override
    public List<Shape<?>> shapes() {
        return item.shapes();
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return step.startsWith("[") ? Optional.of(item) : orOne ? item.under(step) : Optional.empty();
    }
}
