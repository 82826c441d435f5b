package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldService;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Reading;

/** Room that must stay free to work on a unit. */
final class ServiceShape {
    private static final Key<String> FACE = Key.of(
                    "face", new WordForm(Faces.OF_BODY), "F", "the unit's face that it lies at")
            .needed();
    private static final Key<Reading> OUT = Key.of(
                    "out", Quantity.size().usual(20, 2000), "F", "how far it reaches out of the face")
            .needed();
    private static final Key<Reading> LONG = Key.of(
                    "long", Quantity.size().usual(20, 3000), "F", "its size along the unit")
            .unsaid("the whole face");
    private static final Key<Reading> WIDE = Key.of(
                    "wide", Quantity.size().usual(20, 3000), "F", "its size across the unit")
            .unsaid("the whole face");
    private static final Key<Reading> HIGH = Key.of("high", Quantity.size().usual(20, 2000), "F", "its size upwards")
            .unsaid("the whole face");
    private static final Key<List<FaceDistance>> AT = Key.of(
                    "at", new PlaceForm(Faces.OF_BODY), "F", "where along the face")
            .unsaid("its middle");

    static final Shape<ToldService> SHAPE = Shape.of(
            "service",
            "a room for service",
            "Room that must stay free to work on a unit, by its purpose: electric, filter, drain, fan.",
            List.of(FACE, OUT, LONG, WIDE, HIGH, AT),
            ServiceShape::make);

    private ServiceShape() {}

    private static ToldService make(Values values) {
        var sizes = new ToldSizes(
                values.maybe(LONG), values.maybe(WIDE), values.maybe(HIGH), Optional.empty(), Optional.empty());
        return new ToldService(values.path(), values.id(), values.need(FACE), values.need(OUT), sizes, values.list(AT));
    }
}
