package org.spile.geometry.house.told;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * One leg of a path.
 *
 * @param path as {@code runs.lab-supply.path[3]}
 * @param ways forward, aft, left, right, up, down with a distance (mm), or empty for {@code rest}
 * @param section where the section changes: this whole leg is the transition; with no ways and no place, the start's
 * @param flush the side a transition keeps: top, bottom, left, right, rear, front; empty: middle to middle
 * @param bend the corner before this leg: a radius (mm)
 * @param bendKind {@code radius}, {@code mitred}, {@code vanes}; empty: the run's
 * @param through devices in flow order
 * @param parts what comes out when the trailers part; empty if it doesn't
 * @param in the space in which {@code at} counts; empty if unsaid
 * @param at where the leg ends, where that was said in place of distances
 */
public record ToldStation(
        String path,
        Map<String, Optional<Reading>> ways,
        Optional<ToldSection> section,
        String flush,
        Optional<Reading> bend,
        String bendKind,
        List<String> through,
        String parts,
        String in,
        List<FaceDistance> at) {
    /** Copies the lists. */
    public ToldStation {
        through = List.copyOf(through);
        at = List.copyOf(at);
    }
}
