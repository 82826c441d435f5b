package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Position;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Refusal;
import org.spile.geometry.kernel.measure.Sign;

/** A distance from a face, or a coordinate: one reading or two, perhaps {@code out}. */
record DistanceForm() implements Form<FaceDistance> {
    /** How a path names the two numbers of a pair. */
    static final List<String> PAIR = List.of("[1]", "[2]");

    @Override
    public Optional<FaceDistance> read(Spot spot, Scribe scribe) {
        return read(spot, spot.lastStep(), scribe);
    }

    private static Optional<FaceDistance> read(Spot spot, String face, Scribe scribe) {
        if (!spot.isText()) {
            scribe.wrong(spot, spot.found() + " stands where a distance is meant.", "Write 180, 640..1380 or 180 out.");
            return Optional.empty();
        }
        if (SameReading.meant(spot.text())) {
            boolean out = spot.text().endsWith(" out");
            return new SameReading(scribe)
                    .read(spot, Ask.coordinate())
                    .map(reading -> new FaceDistance(spot.path(), face, reading, Optional.empty(), out));
        }
        Sign sign = Faces.AXES.contains(face) ? Sign.ANY : Sign.NOT_NEGATIVE;
        Parse<Position> parse = scribe.quantities().position(spot.text(), sign);
        parse.refusal().ifPresent(why -> refused(spot, face, why, scribe));
        return parse.value().map(position -> distance(spot, face, position.withPath(spot.path())));
    }

    private static FaceDistance distance(Spot spot, String face, Position position) {
        Optional<Reading> far = position.pair() ? Optional.of(position.last()) : Optional.empty();
        return new FaceDistance(spot.path(), face, position.first(), far, position.outward());
    }

    private static void refused(Spot spot, String face, Refusal why, Scribe scribe) {
        if (why.reason() != Refusal.Reason.SIGN) {
            Quantity.refused(spot, why, scribe);
            return;
        }
        String number = why.words().replaceFirst("^[+-]\\s*", "");
        String of = Container.of(spot, scribe).map(name -> " of " + name).orElse("");
        scribe.wrong(
                spot,
                "\"" + why.words() + "\": a distance has no sign.",
                "Inwards from the " + face + of + ": " + number + ". Beyond it: " + number + " out.");
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.distance();
    }

    @Override
    public String words() {
        return "distance";
    }

    /** The two edges off one tape. */
    @Override
    public Optional<Form<?>> under(String step) {
        return PAIR.contains(step) ? Optional.of(Quantity.signed()) : Optional.empty();
    }
}
