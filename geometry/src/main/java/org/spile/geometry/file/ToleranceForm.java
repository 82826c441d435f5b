package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Tolerance;

/** A tolerance alone, {@code ± 1} or {@code +0.5/-0.2}: read as nothing with that tolerance. */
record ToleranceForm() implements Form<Reading> {
    @Override
    public Optional<Reading> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where a tolerance is meant.", "Write ± 1 or +0.5/-0.2.");
            return Optional.empty();
        }
        Parse<Tolerance> parse = scribe.quantities().tolerance(spot.text(), Kind.LENGTH);
        parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
        return parse.value()
                .map(found -> new Reading(
                        spot.path(), 0, found.plus(), found.minus(), Origin.TYPED, true, Kind.LENGTH, spot.text()));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.tolerance();
    }

    @Override
    public String words() {
        return "± length";
    }
}
