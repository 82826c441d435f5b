package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldClimate;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/** The weather that the house must stand. */
final class ClimateShape {
    private static final Key<Reading> LATITUDE =
            Key.of("latitude", Quantity.of(Kind.ANGLE), "M", "of the site, north positive");
    private static final Key<Reading> ALTITUDE = Key.of(
                    "altitude", Quantity.of(Kind.ALTITUDE), "A M", "of the site above the sea")
            .unsaid("0 m");
    private static final NamedForm<Map<String, Rated>> STATES = NamedForm.free(new NamedForm<>(
            KeyNames.fixed("side", List.of("outside", "inside")), new RatedForm(Kind.TEMPERATURE, Kind.RATIO)));

    static final Shape<ToldClimate> SHAPE = Shape.of(
                    "climate",
                    "a climate",
                    "The weather that the house must stand. Every other key names a state: {outside: 31 degC at 75 %, inside: 25 degC at 55 %}.",
                    List.of(LATITUDE, ALTITUDE),
                    values -> new ToldClimate(
                            values.path(), values.maybe(LATITUDE), values.maybe(ALTITUDE), values.others(STATES)))
            .besides(STATES);

    private ClimateShape() {}
}
