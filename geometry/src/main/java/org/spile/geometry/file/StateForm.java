package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.spile.geometry.house.told.ToldState;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The state of one thing: a word that this thing knows, or how far it is moved or turned.
 *
 * @param allowed what a thing may be in: its words, and the kind of its position
 * @param words for tables
 */
record StateForm(Function<Names.Named, States> allowed, String words) implements Form<ToldState> {
    /**
     * The states that a thing may be in.
     *
     * @param words its words
     * @param position the kind of its position, if it may have one
     */
    record States(List<String> words, Optional<Kind> position) {}

    @Override
    public Optional<ToldState> read(Spot spot, Scribe scribe) {
        Optional<Names.Named> thing = scribe.names().named(spot.lastStep());
        if (thing.isEmpty()) {
            return Optional.empty();
        }
        States states = allowed.apply(thing.get());
        if (states.words().contains(spot.text())) {
            return Optional.of(new ToldState(spot.path(), spot.text(), Optional.empty()));
        }
        if (states.position().isPresent() && spot.isText() && !spot.text().isEmpty() && number(spot.text())) {
            Parse<Reading> parse = scribe.quantities()
                    .reading(
                            spot.text(),
                            new Ask(states.position().get(), Ask.distance().sign()));
            parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
            return parse.value().map(far -> new ToldState(spot.path(), "", Optional.of(far.withPath(spot.path()))));
        }
        var all = new ArrayList<>(states.words());
        states.position().ifPresent(kind -> all.add(kind.phrase()));
        String nearest = NearestName.of(spot.text(), states.words())
                .map(word -> "Nearest: \"" + word + "\". ")
                .orElse("");
        scribe.wrong(
                spot,
                spot.found() + " is no state of " + spot.lastStep() + ", "
                        + thing.get().noun() + ".",
                nearest + (all.isEmpty() ? "It has none." : "It can be " + Phrases.or(all) + "."));
        return Optional.empty();
    }

    private static boolean number(String text) {
        return Character.isDigit(text.charAt(0)) || "+-.".indexOf(text.charAt(0)) >= 0;
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.defined("state", () -> {
            ObjectNode piece = book.text(words);
            piece.remove("type");
            piece.putArray("type").add("string").add("number").add("boolean");
            return piece;
        });
    }
}
