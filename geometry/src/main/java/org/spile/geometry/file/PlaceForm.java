package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;

/**
 * {@code at:} distances from faces, in the fixed order of {@link Faces#ALL} so that the order typed means nothing.
 *
 * @param faces the face words and axes it may use
 */
record PlaceForm(List<String> faces) implements Form<List<FaceDistance>> {
    @Override
    public Optional<List<FaceDistance>> read(Spot spot, Scribe scribe) {
        if (!spot.isMap()) {
            scribe.wrong(spot, spot.found() + " stands where a place is meant.", "Write {left: 210, rear: 520}.");
            return Optional.empty();
        }
        new UnknownKeys((key, value) -> hint(key), faces).check(spot, scribe);
        var distances = new ArrayList<FaceDistance>();
        for (String face : faces) {
            spot.child(face)
                    .flatMap(value -> new DistanceForm().read(value, scribe))
                    .ifPresent(distances::add);
        }
        return Optional.of(distances);
    }

    private static String hint(String key) {
        return switch (key) {
            case "back", "aft" -> "The aft face is \"rear\".";
            case "forward" -> "The forward face is \"front\".";
            case "up" -> "The upper face is \"top\", \"ceiling\" or \"roof\".";
            case "down", "underside" -> "The lower face is \"bottom\", \"floor\", \"ceiling\" or \"deck\".";
            default -> "";
        };
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        String name = faces.contains("roof") ? "place" : faces.contains("x") ? "place-by-body" : "place-on-face";
        return book.defined(name, () -> book.fixed(faces, new DistanceForm().schema(book)));
    }

    @Override
    public String words() {
        return "place";
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return faces.contains(step) ? Optional.of(new DistanceForm()) : Optional.empty();
    }

    @Override
    public List<String> keys() {
        return faces;
    }
}
