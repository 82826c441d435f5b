package org.spile.geometry.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import org.spile.geometry.house.told.ToldWeighing;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** What a scale showed under a trailer. */
final class WeighingShape {
    private static final Key<String> TICKET = Key.of(
                    "ticket", new TextForm("words"), "T D", "which weighing it was: a date, a number")
            .unsaid("its place in the list");
    private static final List<Key<Reading>> UNDER = Stream.of(
                    "all, everything together",
                    "coupling, under the coupling",
                    "axles, under all axles",
                    "axle-1, under the rearmost axle",
                    "axle-2, under the next one forward",
                    "axle-3, under the next one forward",
                    "left, under all wheels of the left side",
                    "right, under all wheels of the right side")
            .map(words -> words.split(", "))
            .map(pair -> Key.of(pair[0], Quantity.positive(Kind.MASS), "T", pair[1]))
            .toList();

    static final Shape<ToldWeighing> SHAPE = Shape.of(
            "weighing",
            "a weighing",
            "What scales showed under a trailer.",
            PlacedKeys.and(List.of(TICKET), UNDER.toArray(new Key<?>[0])),
            WeighingShape::make);

    private WeighingShape() {}

    private static ToldWeighing make(Values values) {
        var under = new LinkedHashMap<String, Reading>();
        for (Key<Reading> key : UNDER) {
            values.maybe(key).ifPresent(reading -> under.put(key.name(), reading));
        }
        if (under.isEmpty()) {
            values.scribe().wrongThing(values.spot(), " weighs nothing.", "Write coupling: 84 kg, or all: 1890 kg.");
        }
        return new ToldWeighing(values.path(), values.text(TICKET), Collections.unmodifiableMap(under));
    }
}
