package org.spile.geometry.house.material;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.ToldMaterial;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Tolerance;

/** The materials a house may name: the shipped ones, each value overridden by what the house says itself. Immutable. */
public final class Materials {
    private final Map<String, Material> byId;

    private Materials(Map<String, Material> byId) {
        this.byId = byId;
    }

    /** The shipped ones, in the order of the reference page. */
    public static Materials shipped() {
        var byId = new LinkedHashMap<String, Material>();
        for (ShippedMaterial shipped : ShippedMaterial.values()) {
            byId.put(shipped.id(), shipped.material());
        }
        return new Materials(byId);
    }

    /** These, with what a house tells of its own. */
    public Materials with(Collection<ToldMaterial> told) {
        var merged = new LinkedHashMap<>(byId);
        for (ToldMaterial own : told) {
            merged.put(own.id(), merged(own, byId.get(own.id())));
        }
        return new Materials(merged);
    }

    /** All of them, shipped ones first. */
    public Collection<Material> all() {
        return Collections.unmodifiableCollection(byId.values());
    }

    /** The material of that id, if there is one. */
    public Optional<Material> named(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    private static Material merged(ToldMaterial own, Material shipped) {
        Material base = shipped == null ? unknown(own.id()) : shipped;
        return new Material(
                own.id(),
                base.title(),
                own.conducts().or(base::conducts),
                own.vapour().or(base::vapour),
                base.tight() && own.vapour().isEmpty(),
                own.density().or(base::density),
                own.rough().or(base::rough),
                own.emits().or(base::emits),
                base.thickness(),
                own.tolerance().map(Materials::tolerance),
                base.movement().with(own.stiff(), own.grows(), own.swells()),
                base.source());
    }

    private static Tolerance tolerance(Reading reading) {
        return new Tolerance(reading.plus(), reading.minus());
    }

    private static Material unknown(String id) {
        return new Material(
                id,
                id,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ThicknessRule.NONE,
                Optional.empty(),
                Movement.UNKNOWN,
                "");
    }
}
