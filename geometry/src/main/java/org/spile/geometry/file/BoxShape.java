package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldBox;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Reading;

/** A further box of a thing. */
final class BoxShape {
    static final Key<List<FaceDistance>> AT =
            Key.of("at", new PlaceForm(Faces.OF_BODY), "F", "where it is, from the faces of the first body");
    static final Key<Reading> LONG =
            Key.of("long", Quantity.size().usual(5, 6000), "F", "fore and aft").needed();
    static final Key<Reading> WIDE =
            Key.of("wide", Quantity.size().usual(5, 6000), "F", "across").needed();
    static final Key<Reading> HIGH =
            Key.of("high", Quantity.size().usual(5, 3000), "F", "upwards").needed();

    static final Shape<ToldBox> SHAPE =
            Shape.of("box", "a box", "A further box of the same thing.", List.of(AT, LONG, WIDE, HIGH), BoxShape::make);

    private BoxShape() {}

    private static ToldBox make(Values values) {
        var sizes = new ToldSizes(
                values.maybe(LONG), values.maybe(WIDE), values.maybe(HIGH), Optional.empty(), Optional.empty());
        return new ToldBox(values.path(), values.list(AT), sizes);
    }
}
