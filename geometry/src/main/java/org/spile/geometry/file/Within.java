package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

/** How many layers a size takes in. */
final class Within {
    private Within() {}

    /** Those within a size taken over the wall. */
    static int wall(List<ToldLayer> layers, Scribe scribe) {
        List<Material> materials = layers.stream()
                .map(layer -> scribe.materials().named(layer.material()).orElseThrow())
                .toList();
        return Material.withinWall(materials);
    }

    /** Whether a size is the maker's. */
    static boolean maker(Reading size) {
        return size.origin() == Origin.MAKER;
    }
}
