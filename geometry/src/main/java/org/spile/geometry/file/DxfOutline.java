package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Unit;

/** Finds the one closed shape on a layer of a DXF text. */
final class DxfOutline {
    private DxfOutline() {}

    static List<Vector2D> shape(String text, String layer, Optional<Unit> stated) throws DrawingFault {
        List<DxfPair> pairs = DxfPair.of(text);
        Unit unit = stated.isPresent() ? stated.get() : DrawingUnit.coded(units(pairs));
        List<DxfEntity> entities = DxfEntity.of(pairs);
        List<PlanPath> paths = new DxfPaths(entities, unit).paths();
        String chosen = layer.isEmpty() ? onlyLayer(paths) : known(layer, pairs, entities);
        List<PlanPath> drawn = paths.stream()
                .filter(path -> path.layer().equalsIgnoreCase(chosen))
                .toList();
        String on = "layer \"" + chosen + "\"";
        if (drawn.isEmpty()) {
            throw DrawingFault.error(
                    on + " holds no lines" + others(entities, chosen) + ".", "Draw the shape with polylines.");
        }
        return RingAssembly.one(drawn, on, others(entities, chosen));
    }

    private static int units(List<DxfPair> pairs) throws DrawingFault {
        for (int i = 1; i < pairs.size(); i++) {
            if (pairs.get(i - 1).code() == 9 && pairs.get(i - 1).value().equals("$INSUNITS")) {
                return pairs.get(i).whole();
            }
        }
        return 0;
    }

    private static String onlyLayer(List<PlanPath> paths) throws DrawingFault {
        var layers = new TreeSet<String>(paths.stream().map(PlanPath::layer).toList());
        if (layers.size() == 1) {
            return layers.first();
        }
        throw layers.isEmpty()
                ? DrawingFault.error("no line is drawn in it.", "Is it the right file?")
                : DrawingFault.error(
                        "it has lines on several layers: " + some(layers), "Name one: layer: " + layers.first() + ".");
    }

    private static String known(String layer, List<DxfPair> pairs, List<DxfEntity> entities) throws DrawingFault {
        var layers = new TreeSet<String>(Comparator.comparing((String name) -> name));
        entities.forEach(entity -> layers.add(entity.layer()));
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).starts("LAYER")) {
                name(pairs, i + 1).ifPresent(layers::add);
            }
        }
        for (String name : layers) {
            if (name.equalsIgnoreCase(layer)) {
                return name;
            }
        }
        String nearest = NearestName.of(layer, layers)
                .map(name -> "Nearest: \"" + name + "\".")
                .orElse("");
        throw DrawingFault.error(
                "it has no layer \"" + layer + "\".", nearest.isEmpty() ? "It has " + some(layers) : nearest);
    }

    private static Optional<String> name(List<DxfPair> pairs, int from) {
        for (int i = from; i < pairs.size() && pairs.get(i).code() != 0; i++) {
            if (pairs.get(i).code() == 2) {
                return Optional.of(pairs.get(i).value());
            }
        }
        return Optional.empty();
    }

    private static String some(Set<String> layers) {
        List<String> names = new ArrayList<>(layers);
        String first = String.join(", ", names.subList(0, Math.min(6, names.size())));
        return Shown.sentence(names.size() > 6 ? first + " ..." : first);
    }

    /** The kinds of drawn things on a layer that can't be taken as lines, for messages. */
    private static String others(List<DxfEntity> entities, String layer) {
        var types = new TreeSet<String>();
        for (DxfEntity entity : entities) {
            if (entity.layer().equalsIgnoreCase(layer)
                    && List.of("SPLINE", "ELLIPSE", "INSERT", "HELIX", "MLINE").contains(entity.type())) {
                types.add(entity.type());
            }
        }
        return types.isEmpty() ? "" : " but " + String.join(", ", types) + ", which is not read";
    }
}
