package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Refusal;

/**
 * One value, or {@code as PATH}: the same reading as the one there.
 *
 * @param ask the kind of quantity and its signs
 * @param usual the range outside which a bare number is asked about
 */
record Quantity(Ask ask, Optional<UsualSize> usual) implements Form<Reading> {
    /** A length that something has. */
    static Quantity size() {
        return new Quantity(Ask.size(), Optional.empty());
    }

    /** A length along a way: nothing or more. */
    static Quantity distance() {
        return new Quantity(Ask.distance(), Optional.empty());
    }

    /** A length either way. */
    static Quantity signed() {
        return new Quantity(Ask.coordinate(), Optional.empty());
    }

    /** Any quantity, with the signs natural to it. */
    static Quantity of(Kind kind) {
        return new Quantity(Ask.of(kind), Optional.empty());
    }

    /** Any quantity, more than nothing. */
    static Quantity positive(Kind kind) {
        return new Quantity(Ask.of(kind).positive(), Optional.empty());
    }

    /** Asked about if a bare number lies outside so many mm. */
    Quantity usual(double leastMm, double mostMm) {
        return new Quantity(ask, Optional.of(new UsualSize(leastMm, mostMm)));
    }

    @Override
    public Optional<Reading> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(
                    spot,
                    spot.found() + " stands where " + ask.kind().phrase() + " is meant.",
                    ask.kind().form());
            return Optional.empty();
        }
        if (SameReading.meant(spot.text())) {
            return new SameReading(scribe).read(spot, ask);
        }
        Parse<Reading> parse = scribe.quantities().reading(spot.text(), ask);
        parse.refusal().ifPresent(why -> refused(spot, why, scribe));
        return parse.value().map(reading -> asked(reading.withPath(spot.path()), spot, scribe));
    }

    /** Tells why words are not this quantity. */
    static void refused(Spot spot, Refusal why, Scribe scribe) {
        scribe.wrong(spot, why.says(), why.advice());
    }

    private Reading asked(Reading reading, Spot spot, Scribe scribe) {
        usual.flatMap(range -> range.doubt(reading, scribe.quantities()))
                .filter(doubt -> !roundBeside(spot, scribe))
                .ifPresent(doubt -> scribe.doubt(spot, doubt.says(), doubt.advice()));
        return reading;
    }

    /** A round thing, such as a fan, is as long as it likes. */
    private static boolean roundBeside(Spot spot, Scribe scribe) {
        return !spot.lastStep().equals("round")
                && Steps.walk(scribe.root(), spot.parentPath())
                        .end()
                        .flatMap(thing -> thing.child("round"))
                        .isPresent();
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.quantity(ask.kind());
    }

    @Override
    public String words() {
        return noun(ask.kind());
    }

    /** The kind without its article. */
    static String noun(Kind kind) {
        return kind.phrase().toLowerCase(Locale.ROOT).replaceFirst("^an? ", "");
    }
}
