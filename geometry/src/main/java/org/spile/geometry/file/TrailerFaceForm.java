package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/** A face of another trailer, {@code bunk.rear}. */
record TrailerFaceForm() implements Form<TrailerFace> {
    private static final NameForm TRAILER = NameForm.of("trailers");

    @Override
    public Optional<TrailerFace> read(Spot spot, Scribe scribe) {
        int point = spot.text().indexOf('.');
        if (!spot.isText() || point < 0) {
            scribe.wrong(spot, spot.found() + " stands where a trailer's face is meant.", "Write bunk.rear.");
            return Optional.empty();
        }
        String face = spot.text().substring(point + 1);
        if (!Faces.SIDES.contains(face)) {
            String nearest = NearestName.of(face, Faces.SIDES)
                    .map(near -> "Nearest: \"" + near + "\". ")
                    .orElse("");
            scribe.wrong(
                    spot,
                    "a trailer has no face \"" + face + "\".",
                    nearest + "It has " + Phrases.and(Faces.SIDES) + ".");
            return Optional.empty();
        }
        return TRAILER.known(spot, spot.text().substring(0, point), scribe)
                .map(trailer -> new TrailerFace(trailer, face));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words());
    }

    @Override
    public String words() {
        return "trailer.face";
    }
}
