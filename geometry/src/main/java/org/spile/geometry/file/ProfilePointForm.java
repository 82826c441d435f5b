package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ProfilePoint;
import org.spile.geometry.kernel.measure.Reading;

/** One point of a sloping surface, {@code {left: 300, up: 2244}}: a distance from a side and a height. */
record ProfilePointForm() implements Form<ProfilePoint> {
    private static final List<String> SIDES = List.of("rear", "front", "left", "right", "x", "y");
    private static final List<String> KEYS = List.of("rear", "front", "left", "right", "x", "y", "up");
    private static final Quantity UP = Quantity.signed();

    @Override
    public Optional<ProfilePoint> read(Spot spot, Scribe scribe) {
        List<Spot.Entry> sides = spot.entries().stream()
                .filter(entry -> SIDES.contains(entry.key()))
                .toList();
        new UnknownKeys((key, value) -> "", KEYS).check(spot, scribe);
        Optional<Spot> up = spot.child("up");
        if (!spot.isMap() || up.isEmpty() || sides.size() != 1) {
            scribe.wrong(
                    spot,
                    "a point of a profile is a distance from one side and a height.",
                    "Write {left: 300, up: 2244}.");
            return Optional.empty();
        }
        Optional<FaceDistance> from = new DistanceForm().read(sides.get(0).value(), scribe);
        Optional<Reading> height = UP.read(up.get(), scribe);
        if (from.isPresent() && from.get().far().isPresent()) {
            scribe.wrong(sides.get(0).value(), "a point has one distance, not two.", "Write {left: 300, up: 2244}.");
            return Optional.empty();
        }
        return from.flatMap(side -> height.map(at -> new ProfilePoint(side, at)));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.defined("profile-point", () -> book.fixed(KEYS, new DistanceForm().schema(book)));
    }

    @Override
    public String words() {
        return "{side: distance, up: height}";
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return SIDES.contains(step)
                ? Optional.of(new DistanceForm())
                : step.equals("up") ? Optional.of(UP) : Optional.empty();
    }

    @Override
    public List<String> keys() {
        return KEYS;
    }
}
