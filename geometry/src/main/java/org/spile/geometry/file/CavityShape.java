package org.spile.geometry.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldSurface;

/** A space meant for services. */
final class CavityShape {
    private static final PlacedKeys PLACED =
            PlacedKeys.of(NameForm.of("trailers", "rooms"), new UsualSize(150, 12_000), new UsualSize(60, 640));
    private static final Key<String> OVER =
            Key.of("over", NameForm.of("rooms"), "F", "the room whose outline and finished floor it takes");
    private static final Key<ToldSurface> CEILING = Key.of(
            "ceiling", SurfaceForm.dropping(1500, 3500), "F M", "the ceiling under it, a board seen from both sides");
    private static final Key<ToldSurface> FLOOR =
            Key.of("floor", SurfaceForm.dropping(1, 3500), "F M", "the floor under it, where that is no ceiling");
    private static final Key<ToldSurface> TOP =
            Key.of("top", SurfaceForm.fixed(), "F M", "the surface above it").unsaid("the roof, or from its height");
    private static final Map<String, Key<ToldSurface>> SIDES = sides();
    private static final Key<String> AIR = Key.of("air", NameForm.of("rooms").or("outside"), "A M", "whose air gets in")
            .unsaid("its room's");

    static final Shape<ToldCavity> SHAPE = Shape.of(
                    "cavity",
                    "a cavity",
                    "A space meant for services: an outline between a lower and an upper surface.",
                    keys(),
                    CavityShape::make)
            .hint("depth", "Its upright size is \"high\".")
            .hint("height", "Its upright size is \"high\".")
            .hint("length", "Its size fore and aft is \"long\".")
            .hint("width", "Its size across is \"wide\".")
            .hint("roof", "The surface above it is \"top\".")
            .hint("size", "Write long:, wide: and high:.");

    private CavityShape() {}

    private static Map<String, Key<ToldSurface>> sides() {
        var sides = new LinkedHashMap<String, Key<ToldSurface>>();
        for (String side : List.of("left", "right", "rear", "front")) {
            sides.put(
                    side, Key.of(side, SurfaceForm.fixed(), "F M", "its " + side + " side, where lined or not plumb"));
        }
        return Collections.unmodifiableMap(sides);
    }

    private static List<Key<?>> keys() {
        List<Key<?>> keys = PlacedKeys.and(PLACED.space(), OVER, CEILING, FLOOR, TOP);
        return PlacedKeys.and(PlacedKeys.and(keys, SIDES.values().toArray(new Key<?>[0])), AIR);
    }

    private static ToldCavity make(Values values) {
        if (values.has(CEILING) && values.has(FLOOR)) {
            values.scribe().wrongThing(values.spot(), " has a ceiling and a floor.", "Keep the one that is under it.");
        }
        var sides = new LinkedHashMap<String, ToldSurface>();
        SIDES.forEach((word, key) -> values.maybe(key).ifPresent(side -> sides.put(word, side)));
        return new ToldCavity(
                PLACED.placed(values),
                values.maybe(OVER),
                values.maybe(CEILING).or(() -> values.maybe(FLOOR)),
                !values.has(FLOOR),
                values.maybe(TOP),
                Collections.unmodifiableMap(sides),
                values.text(AIR));
    }
}
