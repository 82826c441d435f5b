package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.kernel.measure.Reading;

/** The keys of a duct's or a line's section. */
final class SectionKeys {
    static final Key<Reading> WIDE =
            Key.of("wide", Quantity.size().usual(10, 1500), "F A", "its level side; across, on an upright leg");
    static final Key<Reading> HIGH = Key.of("high", Quantity.size().usual(10, 1000), "F A", "its upright side");
    static final Key<Reading> LONG =
            Key.of("long", Quantity.size().usual(10, 1500), "F A", "on an upright leg, its side fore and aft");
    static final Key<Reading> ROUND = Key.of("round", Quantity.size().usual(4, 1000), "F A", "its diameter");
    static final Key<String> SHAPE = Key.of(
                    "shape", WordForm.of("rectangle", "oval"), "F A", "whether its short sides are half circles")
            .unsaid("rectangle");
    static final List<Key<?>> ALL = List.of(WIDE, HIGH, LONG, ROUND, SHAPE);

    private SectionKeys() {}

    /** The section, if anything was said of one. */
    static Optional<ToldSection> section(Values values) {
        boolean any = values.has(WIDE) || values.has(HIGH) || values.has(LONG) || values.has(ROUND);
        if (values.has(ROUND) && (values.has(WIDE) || values.has(HIGH) || values.has(LONG))) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " is round and has other sizes too.",
                            "Write round alone, or wide and high.");
        }
        if (values.has(HIGH) && values.has(LONG)) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " has \"high\" and \"long\".",
                            "A level leg is wide and high, an upright one wide and long.");
        }
        if (values.has(SHAPE) && !any) {
            values.scribe()
                    .wrongThing(values.spot(), " has a shape and no size.", "Write wide: 200, high: 80, shape: oval.");
        }
        boolean oval = values.text(SHAPE).equals("oval");
        return any
                ? Optional.of(new ToldSection(
                        values.path(),
                        values.maybe(WIDE),
                        values.maybe(HIGH),
                        values.maybe(LONG),
                        values.maybe(ROUND),
                        oval))
                : Optional.empty();
    }
}
