package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldSpigot;
import org.spile.geometry.kernel.measure.Reading;

/** An opening of a unit: a spigot for a duct, or a port for a pipe. */
final class SpigotShape {
    private static final Key<String> FACE = Key.of(
                    "face", new WordForm(Faces.OF_BODY), "A F", "the unit's face that it is in")
            .needed();
    private static final Key<Reading> WIDE =
            Key.of("wide", Quantity.size().usual(5, 3000), "A F", "its width, looking at the face");
    private static final Key<Reading> HIGH =
            Key.of("high", Quantity.size().usual(5, 1500), "A F", "its height, on an upright face");
    private static final Key<Reading> LONG =
            Key.of("long", Quantity.size().usual(5, 3000), "A F", "its size fore and aft, on top and bottom");
    private static final Key<Reading> ROUND = Key.of("round", Quantity.size().usual(3, 1000), "A F", "its diameter");
    private static final Key<List<FaceDistance>> AT =
            Key.of("at", new PlaceForm(Faces.OF_BODY), "F", "where in the face").unsaid("its middle");
    private static final List<Key<?>> KEYS = List.of(FACE, WIDE, HIGH, LONG, ROUND, AT);

    static final Shape<ToldSpigot> SPIGOT = Shape.of(
            "spigot",
            "a spigot",
            "A collar on a face of a unit; its size is the inside of the duct that fits it.",
            KEYS,
            values -> make(values, true));

    static final Shape<ToldSpigot> PORT = Shape.of(
            "port", "a port", "An opening of a unit for a pipe or a cable.", KEYS, values -> make(values, false));

    private SpigotShape() {}

    private static ToldSpigot make(Values values, boolean sized) {
        boolean level = List.of("top", "bottom").contains(values.need(FACE));
        Key<Reading> wrong = level ? HIGH : LONG;
        Key<Reading> right = level ? LONG : HIGH;
        if (values.has(wrong)) {
            values.scribe()
                    .wrong(
                            values.at(wrong),
                            "the " + values.need(FACE) + " face has no \"" + wrong.name() + "\".",
                            "Its other size is \"" + right.name() + "\".");
        }
        if (sized && !values.has(wrong)) {
            checkSizes(values, right);
        }
        var sizes = new ToldSizes(
                values.maybe(LONG), values.maybe(WIDE), values.maybe(HIGH), values.maybe(ROUND), Optional.empty());
        return new ToldSpigot(values.path(), values.id(), values.need(FACE), sizes, values.list(AT));
    }

    private static void checkSizes(Values values, Key<Reading> other) {
        boolean rectangle = values.has(WIDE) || values.has(other);
        if (values.has(ROUND) == rectangle) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            rectangle
                                    ? " is round and has other sizes too."
                                    : " needs its size: round, or wide and " + other.name() + ".",
                            "Write round: 100; or wide: 240, " + other.name() + ": 90.");
        } else if (rectangle && !(values.has(WIDE) && values.has(other))) {
            String missing = values.has(WIDE) ? other.name() : "wide";
            values.scribe().wrongThing(values.spot(), " needs \"" + missing + "\" too.", "A rectangle has two sizes.");
        }
    }
}
