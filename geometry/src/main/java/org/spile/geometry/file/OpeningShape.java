package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldHinge;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldSlide;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A door, window or hole in a face of a room. */
final class OpeningShape {
    private static final PlacedKeys PLACED =
            PlacedKeys.of(NameForm.of("rooms"), new UsualSize(50, 6000), new UsualSize(50, 3000));
    private static final Key<String> FACE = Key.of(
                    "face",
                    WordForm.of("left", "right", "rear", "front", "floor", "ceiling"),
                    "F A",
                    "the room's face that it is in")
            .needed();
    private static final Key<String> TO = Key.of("to", NameForm.of("rooms").or("outside"), "A", "what is beyond")
            .unsaid("outside");
    private static final Key<ToldHinge> HINGE = Key.of("hinge", HingeShape.SHAPE, "F", "how it swings");
    private static final Key<List<ToldSlide>> SLIDES = Key.of("slides", new SlidesForm(1), "F", "how it slides");
    private static final Key<Reading> UNDERCUT = Key.of("undercut", Quantity.distance(), "A", "the gap under its leaf");
    private static final Key<Reading> LEAK = Key.of("leak", Quantity.of(Kind.AREA), "A", "its open area when shut");
    private static final Key<String> GLASS =
            Key.of("glass", WordForm.of("single", "double", "triple"), "M", "its glazing");

    static final Shape<ToldOpening> SHAPE = Shape.of(
            "opening",
            "an opening",
            "A door, window or hole in a face of a room; with a hinge or a slide it moves too.",
            List.of(
                    PlacedKeys.TITLE,
                    FACE,
                    PlacedKeys.AT,
                    PLACED.longMm(),
                    PLACED.wide(),
                    PLACED.high(),
                    PlacedKeys.ROUND,
                    TO,
                    HINGE,
                    SLIDES,
                    UNDERCUT,
                    LEAK,
                    GLASS),
            OpeningShape::make);

    private OpeningShape() {}

    private static ToldOpening make(Values values) {
        if (values.has(HINGE) && values.has(SLIDES)) {
            values.scribe().wrongThing(values.spot(), " swings and slides.", "Leave out hinge or slides.");
        }
        Optional<ToldSlide> slide = values.list(SLIDES).stream().findFirst();
        return new ToldOpening(
                PLACED.placed(values),
                values.need(FACE),
                values.or(TO, "outside"),
                values.maybe(HINGE),
                slide,
                values.maybe(UNDERCUT),
                values.maybe(LEAK),
                values.text(GLASS));
    }
}
