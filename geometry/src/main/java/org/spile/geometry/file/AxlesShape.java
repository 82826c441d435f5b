package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldAxles;
import org.spile.geometry.kernel.measure.Reading;

/** A trailer's axles. */
final class AxlesShape {
    private static final Key<List<Reading>> REAR = Key.of(
                    "rear",
                    ListForm.orOne(Quantity.distance().usual(100, 15_000)),
                    "T",
                    "each axle's distance from the deck's rear edge")
            .needed();
    private static final Key<Reading> TRACK =
            Key.of("track", Quantity.size().usual(800, 3000), "T", "between the wheels' middles");
    private static final Key<String> SPRINGS = Key.of(
                    "springs", WordForm.of("shared", "separate"), "T", "whether the axles share their load")
            .unsaid("shared");

    static final Shape<ToldAxles> SHAPE =
            Shape.of("axles", "axles", "A trailer's axles.", List.of(REAR, TRACK, SPRINGS), AxlesShape::make);

    private AxlesShape() {}

    private static ToldAxles make(Values values) {
        boolean shared = values.or(SPRINGS, "shared").equals("shared");
        return new ToldAxles(values.path(), values.need(REAR), values.maybe(TRACK), shared);
    }
}
