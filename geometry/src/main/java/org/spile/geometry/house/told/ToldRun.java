package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A duct from opening to opening.
 *
 * @param flow wanted (m3/s)
 * @param replaces the round pipe it stands in for (mm)
 * @param layers from the inside out
 * @param layersWithin how many of the layers, counted from the inside, its sections take in: 0 for clear sections, up to the
 *     wall for sections taken over the wall without the wrap
 * @param bendKind {@code radius}, {@code mitred}, {@code vanes}; empty: round ducts radius = size, others mitred
 * @param vanes of its corners with vanes
 * @param screws of its joints, if their tips stand in
 * @param flexible slack of a flexible duct, 0..1; absent: rigid
 */
public record ToldRun(
        String path,
        String id,
        String title,
        ToldEnd from,
        ToldEnd to,
        List<ToldLayer> layers,
        List<ToldStation> stations,
        Optional<Reading> flow,
        Optional<Reading> replaces,
        int layersWithin,
        String bendKind,
        ToldVanes vanes,
        Optional<ToldScrews> screws,
        Optional<Reading> flexible) {
    /** Copies the lists. */
    public ToldRun {
        layers = List.copyOf(layers);
        stations = List.copyOf(stations);
    }
}
