package org.spile.geometry.file;

import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.kernel.measure.Reading;

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

    private static final Key<String> OF = Key.of(
                    "of", new MaterialForm(), "F", "what it is made of, for its sag and its growth")
            .unsaid("not known");
    private static final Key<Reading> SPANS = Key.of(
                    "spans",
                    Quantity.size(),
                    "F",
                    "the length over which it carries freely; its sag under units is reckoned")
            .unsaid("held all along");
    private static final Key<Reading> SAG =
            Key.of("sag", Quantity.distance(), "F", "how far it may sag in use").unsaid("reckoned if it spans, else 0");

    static final Shape<ToldFixture> SHAPE = Shape.of(
                    "fixture",
                    "a fixture",
                    "Something that stays: a cabinet, a rail, a beam, a pipe.",
                    PlacedKeys.and(PLACED.thing(), KIND, OF, SPANS, SAG),
                    values -> new ToldFixture(
                            PLACED.placed(values),
                            values.or(KIND, "cabinet"),
                            values.or(OF, ""),
                            values.maybe(SPANS),
                            values.maybe(SAG)))
            .hint("depth", "Its size fore and aft is \"long\", across \"wide\".")
            .hint("height", "Its upright size is \"high\".")
            .hint("length", "Its size fore and aft is \"long\".")
            .hint("width", "Its size across is \"wide\".");

    private FixtureShape() {}
}
