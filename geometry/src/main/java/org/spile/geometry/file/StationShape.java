package org.spile.geometry.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;

/** One leg of a path. */
final class StationShape {
    private static final Pattern PACKED = Pattern.compile("\\s*(\\S+?)\\s*[xX×]\\s*(\\S+)\\s*");
    private static final Map<String, Key<Reach>> WAYS = ways();
    private static final Key<String> IN = Key.of(
                    "in", NameForm.of("cavities", "rooms", "trailers"), "F", "the space whose faces \"at\" means")
            .unsaid("the one it is in");
    private static final Key<List<FaceDistance>> AT =
            Key.of("at", new PlaceForm(Faces.ALL), "F", "where the leg ends, in place of how far it goes");
    private static final Key<String> FLUSH = Key.of(
                    "flush",
                    WordForm.of("top", "bottom", "left", "right", "front", "rear"),
                    "F A",
                    "the side that a change of section keeps")
            .unsaid("its middle");
    private static final Key<Bend> BEND = Key.of("bend", new BendForm(), "F A", "how the corner before it is made")
            .unsaid("the run's");
    private static final Key<List<String>> THROUGH =
            Key.of("through", ListForm.orOne(NameForm.of("terminals", "units")), "A F", "devices in it, in flow order");
    private static final Key<String> PARTS =
            Key.of("parts", new TextForm("a word"), "F", "what comes out here when the trailers part");
    private static final Key<Boolean> SLANT =
            Key.of("slant", new YesForm(), "F", "that one slanted leg is meant").unsaid("asked where in doubt");

    static final Shape<ToldStation> SHAPE = Shape.of(
                    "station",
                    "a station",
                    "One leg of a path, corner to corner on the middle line.",
                    keys(),
                    StationShape::make)
            .hint("size", StationShape::unpacked)
            .hint("height", "The upright side is \"high\".")
            .hint("width", "The level side is \"wide\".")
            .hint("back", "The way back is \"aft\".")
            .hint("front", "The way to the front is \"forward\".")
            .hint("rear", "The way to the rear is \"aft\".");

    private StationShape() {}

    private static Map<String, Key<Reach>> ways() {
        var ways = new LinkedHashMap<String, Key<Reach>>();
        for (String way : Faces.WAYS) {
            ways.put(way, Key.of(way, new WayForm(), "F A", "how far it goes " + way));
        }
        return Collections.unmodifiableMap(ways);
    }

    private static List<Key<?>> keys() {
        List<Key<?>> keys = PlacedKeys.and(List.of(), WAYS.values().toArray(new Key<?>[0]));
        keys = PlacedKeys.and(keys, IN, AT);
        keys = PlacedKeys.and(keys, SectionKeys.ALL.toArray(new Key<?>[0]));
        return PlacedKeys.and(keys, FLUSH, BEND, THROUGH, PARTS, SLANT);
    }

    private static String unpacked(String value) {
        Matcher packed = PACKED.matcher(value);
        return packed.matches()
                ? "Write wide: " + packed.group(1) + ", high: " + packed.group(2) + " (wide is the level side)."
                : "Write wide: 300, high: 70 (wide is the level side); or round: 100.";
    }

    private static ToldStation make(Values values) {
        var ways = new LinkedHashMap<String, Optional<Reading>>();
        WAYS.forEach((way, key) -> values.maybe(key).ifPresent(far -> ways.put(way, far.length())));
        opposed(values, ways);
        if (!ways.isEmpty() && values.has(AT)) {
            values.scribe()
                    .wrongThing(values.spot(), " says how far it goes and where it ends.", "Keep the way or \"at\".");
        }
        if (values.maybe(IN).isPresent() && values.has(AT)) {
            Faces.check(values.at(AT), values.need(IN), values.scribe());
        }
        Optional<Bend> bend = values.maybe(BEND);
        return new ToldStation(
                values.path(),
                Collections.unmodifiableMap(ways),
                SectionKeys.section(values),
                values.text(FLUSH),
                bend.flatMap(Bend::radius),
                bend.map(Bend::kind).orElse(""),
                values.list(THROUGH),
                values.text(PARTS),
                values.text(IN),
                values.list(AT));
    }

    private static void opposed(Values values, Map<String, Optional<Reading>> ways) {
        for (int i = 0; i < Faces.WAYS.size(); i += 2) {
            String one = Faces.WAYS.get(i);
            String other = Faces.WAYS.get(i + 1);
            if (ways.containsKey(one) && ways.containsKey(other)) {
                values.scribe()
                        .wrongThing(values.spot(), " goes " + one + " and " + other + " at once.", "Keep one of them.");
            }
        }
    }
}
