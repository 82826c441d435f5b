package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldHinge;
import org.spile.geometry.house.told.ToldMover;
import org.spile.geometry.house.told.ToldSlide;

/** Something that moves. */
final class MoverShape {
    private static final int WAYS = 3;
    private static final PlacedKeys PLACED = PlacedKeys.of(
            NameForm.of("rooms", "cavities", "trailers"), new UsualSize(10, 12_000), new UsualSize(5, 4000));
    private static final Key<List<ToldSlide>> SLIDES =
            Key.of("slides", new SlidesForm(WAYS), "F", "how it slides, from where it is placed");
    private static final Key<ToldHinge> HINGE = Key.of("hinge", HingeShape.SHAPE, "F", "how it swings");
    private static final Key<String> RIDES = Key.of("rides", NameForm.of("movers"), "F", "the mover that carries it");

    static final Shape<ToldMover> SHAPE = Shape.of(
            "mover",
            "a mover",
            "Something that slides or swings: a roof deck, a hatch, a drawer, a container.",
            PlacedKeys.and(PLACED.thing(), SLIDES, HINGE, RIDES),
            MoverShape::make);

    private MoverShape() {}

    private static ToldMover make(Values values) {
        if (values.has(SLIDES) == values.has(HINGE)) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            values.has(HINGE) ? " swings and slides." : " doesn't move.",
                            values.has(HINGE)
                                    ? "Leave out hinge or slides."
                                    : "Give it slides or a hinge, or put it under fixtures.");
        }
        return new ToldMover(PLACED.placed(values), values.list(SLIDES), values.maybe(HINGE), values.text(RIDES));
    }
}
