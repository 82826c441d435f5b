package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Reading;

/**
 * One layer, {@code {ply: 6}}: a material and its thickness. The one place where a thickness without a tolerance gets the
 * material's.
 */
record Layers() implements Form<ToldLayer> {
    private static final Quantity THICKNESS = Quantity.size().usual(0.2, 300);
    private static final Set<String> LISTS = Set.of("linings", "layers", "walls", "floor");

    /** A list of layers, from the air outwards. */
    static ListForm<ToldLayer> list() {
        return ListForm.of(new Layers());
    }

    @Override
    public Optional<ToldLayer> read(Spot spot, Scribe scribe) {
        if (!spot.isMap() || spot.entries().size() != 1) {
            scribe.wrong(
                    spot,
                    spot.found() + " stands where one layer is meant.",
                    "Write each layer by itself, as [{batten: 19}, {ply: 6}].");
            return Optional.empty();
        }
        Spot.Entry entry = spot.entries().get(0);
        Optional<Material> material = scribe.materials().named(entry.key());
        if (material.isEmpty()) {
            unknown(spot, entry, scribe);
        }
        Optional<Reading> thick = THICKNESS.read(entry.value(), scribe);
        return material.flatMap(of -> thick.map(typed -> new ToldLayer(
                entry.value().path(),
                of.id(),
                // The same reading as elsewhere already has the tolerance that it has there.
                SameReading.meant(entry.value().text()) ? typed : of.reckoned(typed))));
    }

    private static void unknown(Spot spot, Spot.Entry entry, Scribe scribe) {
        List<String> ids = scribe.materials().all().stream().map(Material::id).toList();
        scribe.wrongKey(
                spot,
                entry,
                ": there is no material \"" + entry.key() + "\".",
                NearestName.of(entry.key(), ids)
                                .map(id -> "Nearest: \"" + id + "\"; or name")
                                .orElse("Name") + " it under materials.");
    }

    /** The material whose thickness stands there, if a layer's thickness does. */
    static Optional<Material> materialOf(Spot thickness, Scribe scribe) {
        List<String> steps = Steps.of(thickness.path());
        int last = steps.size() - 1;
        boolean layer = last >= 2 && steps.get(last - 1).startsWith("[") && LISTS.contains(steps.get(last - 2));
        return layer ? scribe.materials().named(steps.get(last)) : Optional.empty();
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.layer(THICKNESS.schema(book));
    }

    @Override
    public String words() {
        return "{material: thickness}";
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return Optional.of(THICKNESS);
    }
}
