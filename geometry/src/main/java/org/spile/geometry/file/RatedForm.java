package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Rated;

/**
 * One quantity at another, {@code 120 L/s at 30 Pa}.
 *
 * @param what the quantity before {@code at}
 * @param at the one behind it
 */
record RatedForm(Kind what, Kind at) implements Form<Rated> {
    @Override
    public Optional<Rated> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where " + words() + " is meant.", what.form() + " " + at.form());
            return Optional.empty();
        }
        Parse<Rated> parse = scribe.quantities().rated(spot.text(), Ask.of(what), Ask.of(at));
        parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
        return parse.value().map(rated -> rated.withPath(spot.path()));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words() + ". " + what.form() + " " + at.form());
    }

    @Override
    public String words() {
        return Quantity.noun(what) + " at " + Quantity.noun(at);
    }

    @Override
    public Optional<Form<?>> under(String step) {
        int which = DistanceForm.PAIR.indexOf(step);
        return which < 0 ? Optional.empty() : Optional.of(Quantity.of(which == 0 ? what : at));
    }
}
