package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldMass;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A known load at a point. */
final class MassShape {
    private static final PlacedKeys PLACED = PlacedKeys.of(
            NameForm.of("trailers", "rooms", "cavities"), new UsualSize(1, 10_000), new UsualSize(1, 10_000));
    private static final Key<Reading> HOLDS =
            Key.of("holds", Quantity.positive(Kind.MASS), "T", "of a store, what it holds when full");

    static final Shape<ToldMass> SHAPE = Shape.of(
            "mass",
            "a mass",
            "A known load at a point, or a store that fills and empties.",
            List.of(PlacedKeys.TITLE, PlacedKeys.LIKE, PLACED.in(), PlacedKeys.AT, PlacedKeys.MASS, HOLDS),
            MassShape::make);

    private MassShape() {}

    private static ToldMass make(Values values) {
        if (values.has(PlacedKeys.MASS) == values.has(HOLDS)) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            values.has(HOLDS) ? " has \"mass\" and \"holds\"." : " weighs nothing.",
                            "Write mass: 45 kg; or holds: 80 kg for a store.");
        }
        return new ToldMass(PLACED.placed(values), values.maybe(PlacedKeys.MASS), values.maybe(HOLDS));
    }
}
