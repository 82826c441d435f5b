package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/** Where air meets a room or the weather, or a device in a duct. */
final class TerminalShape {
    private static final PlacedKeys PLACED = PlacedKeys.of(
            NameForm.of("rooms", "cavities", "trailers"), new UsualSize(10, 3000), new UsualSize(10, 2000));
    private static final Key<String> KIND = Key.of(
                    "kind",
                    WordForm.of("grille", "cowl", "louvre", "hood", "chamber", "filter", "flap", "damper"),
                    "F A",
                    "what it is")
            .needed();
    private static final Key<String> FACE = Key.of(
            "face",
            WordForm.of("left", "right", "rear", "front", "floor", "ceiling", "roof", "top"),
            "F A",
            "the face it is in, of what it is in");
    private static final Key<Reading> FREE = Key.of("free", Quantity.of(Kind.RATIO), "A", "the open share of its face");
    private static final Key<Reading> OUT =
            Key.of("out", Quantity.size().usual(5, 1500), "F", "how far it stands out of the face");
    private static final Key<Rated> CLEAN =
            Key.of("clean", new RatedForm(Kind.PRESSURE, Kind.FLOW), "A", "its drop when clean");
    private static final Key<Rated> LOADED =
            Key.of("loaded", new RatedForm(Kind.PRESSURE, Kind.FLOW), "A", "its drop when due for a change");
    private static final Key<Reading> OPENS =
            Key.of("opens", Quantity.of(Kind.PRESSURE), "A", "the pressure that opens it");
    private static final Key<Reading> LEAK = Key.of("leak", Quantity.of(Kind.AREA), "A", "its open area when shut");
    private static final Key<Reading> LOSS =
            Key.of("loss", Quantity.of(Kind.NUMBER), "A", "its loss coefficient, from its maker or measured");

    private static final Map<Key<?>, List<String>> ONLY = Map.of(
            FREE, List.of("grille", "louvre", "cowl", "hood"),
            OUT, List.of("cowl", "hood", "louvre", "grille", "chamber"),
            CLEAN, List.of("filter"),
            LOADED, List.of("filter"),
            OPENS, List.of("flap"),
            LEAK, List.of("chamber", "flap", "damper"));

    static final Shape<ToldTerminal> SHAPE = Shape.of(
            "terminal",
            "a terminal",
            "Where air meets a room or the weather, on a face; or a device in a duct, named by the run's \"through\".",
            PlacedKeys.and(PLACED.space(), PlacedKeys.ROUND, KIND, FACE, FREE, OUT, CLEAN, LOADED, OPENS, LEAK, LOSS),
            TerminalShape::make);

    private TerminalShape() {}

    private static ToldTerminal make(Values values) {
        String kind = values.need(KIND);
        for (Key<?> key : SHAPE.allKeys()) {
            List<String> kinds = ONLY.getOrDefault(key, List.of(kind));
            if (values.has(key) && !kinds.contains(kind)) {
                values.scribe()
                        .wrong(
                                values.at(key),
                                "a " + kind + " has no \"" + key.name() + "\".",
                                "That is for a " + Phrases.or(kinds) + ".");
            }
        }
        return new ToldTerminal(
                PLACED.placed(values),
                kind,
                values.text(FACE),
                values.maybe(FREE),
                values.maybe(OUT),
                values.maybe(CLEAN),
                values.maybe(LOADED),
                values.maybe(OPENS),
                values.maybe(LEAK),
                values.maybe(LOSS));
    }
}
