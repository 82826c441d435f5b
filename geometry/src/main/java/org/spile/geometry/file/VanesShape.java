package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldVanes;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** Turning vanes. */
final class VanesShape {
    /** One and a half inches between small single vanes; from memory. */
    private static final double USUAL_APART_MM = 38;
    /** Common practice, no source. */
    private static final double USUAL_THICK_MM = 0.6;

    private static final Key<Reading> APART = Key.of(
                    "apart", Quantity.size().usual(10, 300), "A", "from vane to vane along the mitre")
            .unsaid("38");
    private static final Key<Reading> THICK = Key.of(
                    "thick", Quantity.size().usual(0.3, 60), "A", "how thick each is, seen edge on")
            .unsaid("0.6");

    static final Shape<ToldVanes> SHAPE = Shape.of(
            "vanes",
            "turning vanes",
            "The vanes in a run's corners with vanes.",
            List.of(APART, THICK),
            values -> of(values.path(), values.maybe(APART), values.maybe(THICK)));

    private VanesShape() {}

    /** As they are where nothing is said of them. */
    static ToldVanes usual(String path) {
        return of(path, Optional.empty(), Optional.empty());
    }

    private static ToldVanes of(String path, Optional<Reading> apart, Optional<Reading> thick) {
        return new ToldVanes(
                apart.orElseGet(() -> Reading.byDefault(path + ".apart", Kind.LENGTH, USUAL_APART_MM)),
                thick.orElseGet(() -> Reading.byDefault(path + ".thick", Kind.LENGTH, USUAL_THICK_MM)));
    }
}
