package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldLimits;
import org.spile.geometry.kernel.measure.Band;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** What the user demands. */
final class LimitsShape {
    private static final Key<Reading> CLEARANCE = Key.of(
                    "clearance", Quantity.distance(), "F", "free room between any two things")
            .unsaid("5");
    private static final Key<Reading> HEADROOM = Key.of(
                    "headroom", Quantity.size().usual(1200, 3000), "F", "standing height in every room")
            .unsaid("as cited by its check");
    private static final Key<Map<String, Reading>> NOISE = byRoom("noise", Kind.SOUND, "A", "the most noise, dB(A)");
    private static final Key<Map<String, Reading>> FLOW = byRoom("flow", Kind.FLOW, "A", "the flow wanted");
    private static final Key<Map<String, Reading>> VELOCITY =
            byRoom("velocity", Kind.SPEED, "A", "the most air speed at a grille");
    private static final Key<Map<String, Band>> COUPLING = Key.of(
            "coupling",
            new NamedForm<>(KeyNames.things("trailer", "trailers"), new BandForm(Kind.MASS)),
            "T",
            "the load that the coupling must have");
    private static final Key<Map<String, Reading>> AXLE = Key.of(
            "axle",
            new NamedForm<>(KeyNames.things("trailer", "trailers"), Quantity.positive(Kind.MASS)),
            "T",
            "the most load on one axle");
    private static final Key<Map<String, Reading>> ROAD = Key.of(
            "road",
            new NamedForm<>(
                    KeyNames.fixed("size", List.of("wide", "high", "long")),
                    Quantity.size().usual(1500, 20_000)),
            "T",
            "the greatest size on the road");

    private static final Key<Reading> WARMS = Key.of(
                    "warms", Quantity.of(Kind.WARMING), "F", "how much warmer or colder it gets than when it was built")
            .unsaid("0 K");
    private static final Key<Reading> DAMPS = Key.of(
                    "damps",
                    Quantity.of(Kind.RATIO),
                    "F",
                    "how much damper or drier its wood gets than when it was built")
            .unsaid("0 %");
    private static final Key<Reading> SWAYS = Key.of(
                    "sways", Quantity.distance(), "F", "how far a unit may shift on the road, every way")
            .unsaid("0");

    static final Shape<ToldLimits> SHAPE = Shape.of(
            "limits",
            "limits",
            "What you demand.",
            List.of(CLEARANCE, HEADROOM, NOISE, FLOW, VELOCITY, COUPLING, AXLE, ROAD, WARMS, DAMPS, SWAYS),
            values -> new ToldLimits(
                    values.maybe(CLEARANCE),
                    values.maybe(HEADROOM),
                    values.map(NOISE),
                    values.map(FLOW),
                    values.map(VELOCITY),
                    values.map(COUPLING),
                    values.map(AXLE),
                    values.map(ROAD),
                    values.maybe(WARMS),
                    values.maybe(DAMPS),
                    values.maybe(SWAYS)));

    private LimitsShape() {}

    private static Key<Map<String, Reading>> byRoom(String name, Kind kind, String asked, String says) {
        return Key.of(name, new NamedForm<>(KeyNames.things("room", "rooms"), Quantity.of(kind)), asked, says);
    }
}
