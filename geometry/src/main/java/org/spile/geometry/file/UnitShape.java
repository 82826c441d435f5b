package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldService;
import org.spile.geometry.house.told.ToldSpigot;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/** A thing to be fitted. */
final class UnitShape {
    private static final PlacedKeys PLACED = PlacedKeys.of(
            NameForm.of("cavities", "rooms", "trailers"),
            new UsualSize(60, 3000),
            new UsualSize(60, 1500),
            "its size along its air");
    private static final Key<String> BLOWS = Key.of(
                    "blows", new WordForm(Faces.WAYS), "F A", "the way its air goes, its own forward")
            .unsaid("forward");
    private static final Key<List<String>> HUNG_FROM = Key.of(
                    "hung-from",
                    ListForm.orOne(NameForm.of("fixtures", "movers").or("top")),
                    "F",
                    "what carries it from above")
            .unsaid("top");
    private static final Key<List<String>> STANDS_ON = Key.of(
            "stands-on",
            ListForm.orOne(NameForm.of("fixtures", "movers", "units").or("floor")),
            "F",
            "what carries it from below");
    private static final Key<String> JOINS =
            Key.of("joins", NameForm.of("spigots"), "F A", "the spigot it sits against");
    private static final Key<List<ToldLayer>> LAYERS =
            Key.of("layers", Layers.list(), "F M T", "its shell, from the inside out");
    private static final Key<String> SIZES = Key.of(
                    "sizes", WordForm.of("inside", "outside"), "F", "what its sizes are taken over")
            .unsaid("outside; with layers, inside");
    private static final Key<Reading> VOID =
            Key.of("void", Quantity.size().usual(60, 1500), "F", "the depth of cavity that its maker asks");
    private static final Key<Map<String, Reading>> CLEARANCE = Key.of(
            "clearance",
            new NamedForm<>(KeyNames.fixed("face", Faces.OF_BODY), Quantity.distance()),
            "F",
            "free room that its maker asks at a face");
    private static final Key<Map<String, ToldService>> SERVICE =
            Key.of("service", NamedForm.free(ServiceShape.SHAPE), "F", "room to work on it");
    private static final Key<Map<String, ToldSpigot>> SPIGOTS =
            Key.of("spigots", NamedForm.free(SpigotShape.SPIGOT), "A F", "its collars for ducts");
    private static final Key<Map<String, ToldSpigot>> PORTS =
            Key.of("ports", NamedForm.free(SpigotShape.PORT), "F M", "its openings for pipes and cables");
    private static final Key<Map<String, List<Rated>>> FAN = Key.of(
            "fan",
            NamedForm.free(ListForm.of(new RatedForm(Kind.FLOW, Kind.PRESSURE)).atLeast(2)),
            "A",
            "points of its fan curve, by speed");
    private static final Key<Rated> COOLING = Key.of(
            "cooling",
            new RatedForm(Kind.POWER, Kind.TEMPERATURE),
            "M",
            "what it cools, at the outside temperature rated");
    private static final Key<Rated> HEATING = Key.of(
            "heating",
            new RatedForm(Kind.POWER, Kind.TEMPERATURE),
            "M",
            "what it heats, at the outside temperature rated");

    static final Shape<ToldUnit> SHAPE = Shape.of(
                    "unit",
                    "a unit",
                    "A thing to be fitted: a cooler, a fan, a plenum box.",
                    PlacedKeys.and(
                            PLACED.thing(),
                            BLOWS,
                            HUNG_FROM,
                            STANDS_ON,
                            JOINS,
                            LAYERS,
                            SIZES,
                            VOID,
                            CLEARANCE,
                            SERVICE,
                            SPIGOTS,
                            PORTS,
                            FAN,
                            COOLING,
                            HEATING),
                    UnitShape::make)
            .hint("depth", "Its upright size is \"high\", its size along the air \"long\".")
            .hint("height", "Its upright size is \"high\".")
            .hint("length", "Its size along its air is \"long\".")
            .hint("width", "Its size across its air is \"wide\".")
            .hint("weight", "What it weighs is \"mass\".");

    private UnitShape() {}

    private static ToldUnit make(Values values) {
        List<ToldLayer> layers = values.list(LAYERS);
        if (!layers.isEmpty() && !values.has(SIZES)) {
            askWhichSizes(values);
        }
        if (values.has(HUNG_FROM) && values.has(STANDS_ON)) {
            values.scribe().wrongThing(values.spot(), " hangs and stands.", "Leave out hung-from or stands-on.");
        }
        for (String name : values.map(PORTS).keySet()) {
            if (values.map(SPIGOTS).containsKey(name)) {
                values.scribe()
                        .wrongThing(values.spot(), " has a spigot and a port \"" + name + "\".", "Rename one of them.");
            }
        }
        return new ToldUnit(
                PLACED.placed(values),
                values.or(BLOWS, "forward"),
                values.list(HUNG_FROM),
                values.list(STANDS_ON),
                values.text(JOINS),
                layers,
                values.text(SIZES).equals("outside") ? Within.wall(layers, values.scribe()) : 0,
                values.maybe(VOID),
                values.map(CLEARANCE),
                values.map(SERVICE),
                values.map(SPIGOTS),
                values.map(PORTS),
                values.map(FAN),
                values.maybe(COOLING),
                values.maybe(HEATING));
    }

    /** Sizes of bought things are printed over the outside; with layers they would silently become inside sizes. */
    private static void askWhichSizes(Values values) {
        Optional<Key<Reading>> maker = List.of(PLACED.longMm(), PLACED.wide(), PLACED.high(), PlacedKeys.ROUND).stream()
                .filter(key -> values.maybe(key).map(Within::maker).orElse(false))
                .findFirst();
        String why = maker.map(key -> "its \"" + key.name() + "\" is the maker's, who measures outside")
                .orElse(
                        values.has(FAN) || values.has(COOLING) || values.has(HEATING)
                                ? "it is bought, and its maker measures outside"
                                : "");
        if (!why.isEmpty()) {
            values.scribe()
                    .doubt(
                            values.at(LAYERS),
                            "with layers, sizes are inside; but " + why + ".",
                            "Write sizes: outside, or sizes: inside.");
        }
    }
}
