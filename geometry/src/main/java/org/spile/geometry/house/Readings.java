package org.spile.geometry.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * The one place every reading passes on its way into the geometry: a what-if's values replace the told ones here, and a
 * layer's thickness gets the tolerance of its material.
 */
final class Readings {
    private final Map<String, Double> values;
    private final Materials materials;
    private final Map<String, Reading> used = new LinkedHashMap<>();

    Readings(Map<String, Double> values, Materials materials) {
        this.values = values;
        this.materials = materials;
    }

    /** The reading as it counts in this house. */
    Reading now(Reading told) {
        Double other = values.get(told.path());
        Reading now = other == null ? told : told.withValue(other);
        if (!now.path().isEmpty()) {
            used.put(now.path(), now);
        }
        return now;
    }

    /** The reading as a sum of itself. */
    Stack of(Reading told) {
        return Stack.of(now(told));
    }

    /** A layer's thickness, with its material's tolerance where none was typed. */
    Stack of(ToldLayer layer) {
        Reading now = now(layer.thick());
        Reading reckoned =
                materials.named(layer.material()).map(m -> m.reckoned(now)).orElse(now);
        used.put(reckoned.path(), reckoned);
        return Stack.of(reckoned);
    }

    /** The thickness of several layers. */
    Stack of(List<ToldLayer> layers) {
        return layers.stream().map(this::of).reduce(Stack.ZERO, Stack::plus);
    }

    /** Every reading that passed, by path, in the order of first use. */
    Map<String, Reading> used() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(used));
    }
}
