package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldAxles;
import org.spile.geometry.house.told.ToldDock;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldOutline;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.house.told.ToldWeighing;
import org.spile.geometry.kernel.measure.Reading;

/** A movable base. */
final class TrailerShape {
    private static final Key<Reading> LONG =
            Key.of("long", Quantity.size().usual(1500, 16_000), "F T", "its deck, fore and aft");
    private static final Key<Reading> WIDE =
            Key.of("wide", Quantity.size().usual(900, 4000), "F T", "its deck, across");
    private static final Key<ToldOutline> OUTLINE =
            Key.of("outline", new OutlineForm(), "F T", "its deck's plan, in place of long and wide");
    private static final Key<Reading> GROUND =
            Key.of("ground", Quantity.distance().usual(100, 2000), "T D", "its deck top above the road");
    private static final Key<ToldSurface> ROOF = Key.of(
            "roof", SurfaceForm.fixed(), "F M T", "the bare underside, up from the deck; its layers go on outwards");
    private static final Key<List<ToldLayer>> WALLS =
            Key.of("walls", Layers.list(), "F M T", "its walls, from the inside out");
    private static final Key<List<ToldLayer>> FLOOR =
            Key.of("floor", Layers.list(), "M T", "its deck, from the inside out");
    private static final Key<List<FaceDistance>> COUPLING =
            Key.of("coupling", new PlaceForm(Faces.ALL), "T", "where it is towed");
    private static final Key<ToldAxles> AXLES = Key.of("axles", AxlesShape.SHAPE, "T", "its axles");
    private static final Key<ToldDock> DOCK =
            Key.of("dock", DockShape.SHAPE, "F", "how it stands against another trailer");
    private static final Key<List<ToldWeighing>> WEIGHED =
            Key.of("weighed", ListForm.of(WeighingShape.SHAPE), "T", "what scales showed");

    static final Shape<ToldTrailer> SHAPE = Shape.of(
                    "trailer",
                    "a trailer",
                    "A movable base: deck, walls, roof, coupling, axles.",
                    List.of(
                            PlacedKeys.TITLE,
                            PlacedKeys.LIKE,
                            LONG,
                            WIDE,
                            OUTLINE,
                            GROUND,
                            ROOF,
                            WALLS,
                            FLOOR,
                            COUPLING,
                            AXLES,
                            DOCK,
                            WEIGHED),
                    TrailerShape::make)
            .hint("length", "Its deck is \"long\" fore and aft.")
            .hint("width", "Its deck is \"wide\" across.")
            .hint("high", "Its height follows from \"roof\".")
            .hint("tongue", "Where it is towed is \"coupling\".")
            .hint("hitch", "Where it is towed is \"coupling\".");

    private TrailerShape() {}

    private static ToldTrailer make(Values values) {
        var sizes = new ToldSizes(
                values.maybe(LONG), values.maybe(WIDE), Optional.empty(), Optional.empty(), values.maybe(OUTLINE));
        SizeRules.check(values, sizes);
        if (sizes.outline().isEmpty()
                && (sizes.longMm().isEmpty() || sizes.wideMm().isEmpty())) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " needs its deck: long and wide, or an outline.",
                            "Write long: 6000, wide: 2440.");
        }
        var deck = new Placed(
                values.path(),
                values.id(),
                values.or(PlacedKeys.TITLE, values.id()),
                Optional.empty(),
                List.of(),
                sizes,
                Optional.empty(),
                List.of(),
                Optional.empty());
        return new ToldTrailer(
                deck,
                values.maybe(GROUND),
                values.maybe(ROOF),
                values.list(WALLS),
                values.list(FLOOR),
                values.list(COUPLING),
                values.maybe(AXLES),
                values.maybe(DOCK),
                values.list(WEIGHED));
    }
}
