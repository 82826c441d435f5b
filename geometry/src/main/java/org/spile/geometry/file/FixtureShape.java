package org.spile.geometry.file;

import org.spile.geometry.house.told.ToldFixture;

/** Something that stays. */
final class FixtureShape {
    private static final PlacedKeys PLACED = PlacedKeys.of(
            NameForm.of("rooms", "cavities", "trailers"), new UsualSize(5, 12_000), new UsualSize(5, 4000));
    private static final Key<String> KIND = Key.of(
                    "kind",
                    WordForm.of("cabinet", "rail", "stud", "beam", "pipe", "shelf", "tank"),
                    "F",
                    "what it is; no remedy cuts a rail, stud or beam")
            .unsaid("cabinet");

    static final Shape<ToldFixture> SHAPE = Shape.of(
                    "fixture",
                    "a fixture",
                    "Something that stays: a cabinet, a rail, a beam, a pipe.",
                    PlacedKeys.and(PLACED.thing(), KIND),
                    values -> new ToldFixture(PLACED.placed(values), values.or(KIND, "cabinet")))
            .hint("depth", "Its size fore and aft is \"long\", across \"wide\".")
            .hint("height", "Its upright size is \"high\".")
            .hint("length", "Its size fore and aft is \"long\".")
            .hint("width", "Its size across is \"wide\".");

    private FixtureShape() {}
}
