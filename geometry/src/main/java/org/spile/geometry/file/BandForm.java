package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Band;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Parse;

/** From a low to a high value, {@code 60 kg..110 kg}. */
record BandForm(Kind kind) implements Form<Band> {
    @Override
    public Optional<Band> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where a range is meant.", kind.form());
            return Optional.empty();
        }
        Parse<Band> parse = scribe.quantities().band(spot.text(), Ask.of(kind));
        parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
        return parse.value().map(band -> band.withPath(spot.path()));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words());
    }

    @Override
    public String words() {
        return Quantity.noun(kind) + ".." + Quantity.noun(kind);
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return DistanceForm.PAIR.contains(step) ? Optional.of(Quantity.of(kind)) : Optional.empty();
    }
}
