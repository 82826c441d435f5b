package org.spile.geometry.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.material.Movement;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * The one place every reading passes on its way into the geometry: a what-if's values replace the told ones here, and a
 * layer's thickness gets the tolerance of its material.
 */
final class Readings {
    /** A hundredth of dry mass, for which swelling is told. */
    private static final double HUNDREDTH = 0.01;

    private final Map<String, Double> values;
    private final Materials materials;
    private final Optional<Reading> damps;
    private final Map<String, Reading> used = new LinkedHashMap<>();

    Readings(Map<String, Double> values, Materials materials) {
        this(values, materials, Optional.empty());
    }

    /**
     * @param damps how much damper or drier wood gets, as a share of its dry mass
     */
    Readings(Map<String, Double> values, Materials materials, Optional<Reading> damps) {
        this.values = values;
        this.materials = materials;
        this.damps = damps;
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
        double swells = materials
                .named(layer.material())
                .map(material -> swell(material.movement()))
                .orElse(0.0);
        return Stack.of(reckoned).plus(InUse.eitherWay(reckoned.path() + " with damp", swells * reckoned.value()));
    }

    /** How much of its size across the grain a material gains or loses: dD = D C (M - M0), Wood Handbook FPL-GTR-190, 13. */
    double swell(Movement movement) {
        double more = damps.map(reading -> now(reading).value()).orElse(0.0);
        return more == 0
                ? 0
                : more
                        / HUNDREDTH
                        * movement.swells().map(swells -> now(swells).value()).orElse(0.0);
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
