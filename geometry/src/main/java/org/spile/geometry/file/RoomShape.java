package org.spile.geometry.file;

import java.util.Map;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A volume people use. */
final class RoomShape {
    private static final PlacedKeys PLACED =
            PlacedKeys.of(NameForm.of("trailers"), new UsualSize(500, 15_000), new UsualSize(1200, 4000));
    private static final Key<Reading> FLOOR = Key.of(
                    "floor", Quantity.signed(), "F M", "its finished floor above the deck")
            .unsaid("0");
    private static final Key<ToldSurface> CEILING = Key.of(
                    "ceiling", SurfaceForm.dropping(1200, 4000), "F M", "its ceiling, where no cavity lowers it")
            .unsaid("the roof");
    private static final Key<Reading> HEADROOM = Key.of(
                    "headroom", Quantity.size().usual(1200, 3000), "F", "standing height asked for")
            .unsaid("the limits'");
    private static final Key<Map<String, ToldOpening>> OPENINGS =
            Key.of("openings", NamedForm.free(OpeningShape.SHAPE), "F A M", "its doors, windows and holes");
    private static final Key<Reading> PEOPLE = Key.of("people", Quantity.of(Kind.COUNT), "A M", "how many use it");
    private static final Key<Reading> HEAT = Key.of("heat", Quantity.of(Kind.POWER), "M", "heat given off in it");
    private static final Key<Reading> STEAM =
            Key.of("steam", Quantity.of(Kind.MASS_RATE), "M", "water given off to its air");

    static final Shape<ToldRoom> SHAPE = Shape.of(
                    "room",
                    "a room",
                    "A volume people use.",
                    PlacedKeys.and(PLACED.plan(), FLOOR, CEILING, HEADROOM, OPENINGS, PEOPLE, HEAT, STEAM),
                    RoomShape::make)
            .hint("high", "Its height follows from \"ceiling\" or the roof.")
            .hint("height", "Its height follows from \"ceiling\" or the roof.")
            .hint("length", "Its size fore and aft is \"long\".")
            .hint("width", "Its size across is \"wide\".")
            .hint("doors", "Doors and windows are \"openings\".")
            .hint("windows", "Doors and windows are \"openings\".");

    private RoomShape() {}

    private static ToldRoom make(Values values) {
        return new ToldRoom(
                PLACED.placed(values),
                values.or(FLOOR, Kind.LENGTH, 0),
                values.maybe(CEILING),
                values.maybe(HEADROOM),
                values.map(OPENINGS),
                values.maybe(PEOPLE),
                values.maybe(HEAT),
                values.maybe(STEAM));
    }
}
