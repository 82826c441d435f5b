package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldSlide;
import org.spile.geometry.kernel.measure.Reading;

/**
 * Slides, {@code {forward: 2900}}: ways and the whole travel along each.
 *
 * @param most how many there may be
 */
record SlidesForm(int most) implements Form<List<ToldSlide>> {
    private static final Quantity TRAVEL = Quantity.size().usual(20, 12_000);
    private static final NamedForm<Reading> WAYS = new NamedForm<>(KeyNames.fixed("way", Faces.WAYS), TRAVEL);

    @Override
    public Optional<List<ToldSlide>> read(Spot spot, Scribe scribe) {
        return WAYS.read(spot, scribe).map(byWay -> {
            if (byWay.size() > most) {
                scribe.wrong(spot, "it slides " + byWay.size() + " ways.", "Here it can slide " + most + ".");
            }
            var slides = new ArrayList<ToldSlide>();
            for (String way : Faces.WAYS) {
                if (byWay.containsKey(way)) {
                    slides.add(new ToldSlide(spot.path() + "." + way, way, byWay.get(way)));
                }
            }
            return List.copyOf(slides);
        });
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return WAYS.schema(book);
    }

    @Override
    public String words() {
        return "{way: travel}";
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return WAYS.under(step);
    }

    @Override
    public List<String> keys() {
        return Faces.WAYS;
    }
}
