package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldLine;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A service that isn't a duct. */
final class LineShape {
    private static final Key<String> KIND = Key.of(
                    "kind", WordForm.of("drain", "refrigerant", "cable", "water"), "F M", "what it carries")
            .needed();
    private static final Key<ToldEnd> FROM =
            Key.of("from", EndForm.OF_LINE, "F", "where it starts").needed();
    private static final Key<ToldEnd> TO =
            Key.of("to", EndForm.OF_LINE, "F", "where it ends").needed();
    private static final Key<List<ToldLayer>> LAYERS =
            Key.of("layers", Layers.list(), "F M", "what is wrapped round it");
    private static final Key<List<ToldStation>> PATH =
            Key.of("path", ListForm.of(StationShape.SHAPE), "F", "its legs").unsaid("to be routed");
    private static final Key<Reading> FALL =
            Key.of("fall", Quantity.positive(Kind.SLOPE), "F M", "of a drain's level legs");
    private static final Key<Reading> RADIUS =
            Key.of("radius", Quantity.size().usual(10, 1000), "F", "its least bend radius, at the middle");
    private static final Key<Reading> TRAP =
            Key.of("trap", Quantity.size().usual(10, 300), "M", "the height of its trap");
    private static final Key<Reading> PUMP =
            Key.of("pump", Quantity.size().usual(50, 5000), "M", "the lift of its pump");
    private static final Map<Key<?>, List<String>> ONLY =
            Map.of(FALL, List.of("drain", "water"), TRAP, List.of("drain"), PUMP, List.of("drain", "water"));

    static final Shape<ToldLine> SHAPE = Shape.of(
            "line",
            "a line",
            "A service that isn't a duct: a drain, a refrigerant pair, a cable, a water pipe; sized over it, before its layers.",
            List.of(
                    PlacedKeys.TITLE,
                    PlacedKeys.LIKE,
                    KIND,
                    FROM,
                    TO,
                    SectionKeys.ROUND,
                    SectionKeys.WIDE,
                    SectionKeys.HIGH,
                    LAYERS,
                    PATH,
                    FALL,
                    RADIUS,
                    TRAP,
                    PUMP),
            LineShape::make);

    private LineShape() {}

    private static ToldLine make(Values values) {
        String kind = values.need(KIND);
        ONLY.forEach((key, kinds) -> {
            if (values.has(key) && !kinds.contains(kind)) {
                values.scribe()
                        .wrong(
                                values.at(key),
                                "a " + kind + " line has no \"" + key.name() + "\".",
                                "That is for a " + Phrases.or(kinds) + ".");
            }
        });
        if (values.has(PATH)) {
            Slants.check(values.at(PATH), values.list(PATH), values.scribe());
        }
        Optional<ToldSection> section = SectionKeys.section(values);
        if (section.isEmpty()) {
            values.scribe().wrongThing(values.spot(), " needs its size.", "Write round: 26, or wide: 70, high: 35.");
            return null;
        }
        return new ToldLine(
                values.path(),
                values.id(),
                values.or(PlacedKeys.TITLE, values.id()),
                kind,
                values.need(FROM),
                values.need(TO),
                section.get(),
                values.list(LAYERS),
                values.list(PATH),
                values.maybe(FALL),
                values.maybe(RADIUS),
                values.maybe(TRAP),
                values.maybe(PUMP));
    }
}
