package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldHinge;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A hinge. */
final class HingeShape {
    private static final double QUARTER_TURN_DEG = 90;
    private static final Key<String> EDGE = Key.of("edge", new WordForm(Faces.OF_BODY), "F", "the edge that stays")
            .needed();
    private static final Key<String> OPENS = Key.of(
                    "opens", new WordForm(Faces.WAYS), "F", "the way the leaf first goes")
            .needed();
    private static final Key<Reading> BY =
            Key.of("by", Quantity.positive(Kind.ANGLE), "F", "how far it opens").unsaid("90 deg");

    static final Shape<ToldHinge> SHAPE = Shape.of(
            "hinge",
            "a hinge",
            "The edge that stays; the pin lies along it, in the face that the leaf opens to.",
            List.of(EDGE, OPENS, BY),
            values -> new ToldHinge(
                    values.path(), values.need(EDGE), values.need(OPENS), values.or(BY, Kind.ANGLE, QUARTER_TURN_DEG)));

    private HingeShape() {}
}
