package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.kernel.measure.NearestName;

/** The name of a material, shipped or the file's own. */
record MaterialForm() implements Form<String> {
    @Override
    public Optional<String> read(Spot spot, Scribe scribe) {
        if (spot.isText() && scribe.materials().named(spot.text()).isPresent()) {
            return Optional.of(spot.text());
        }
        List<String> ids = scribe.materials().all().stream().map(Material::id).toList();
        scribe.wrong(
                spot,
                spot.found() + " is no material.",
                NearestName.of(spot.text(), ids)
                                .map(id -> "Nearest: \"" + id + "\"; or name")
                                .orElse("Name") + " it under materials.");
        return Optional.empty();
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.text(words());
    }

    @Override
    public String words() {
        return "material";
    }
}
