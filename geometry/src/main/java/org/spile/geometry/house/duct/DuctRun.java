package org.spile.geometry.house.duct;

import java.util.List;
import java.util.Optional;

/**
 * A run worked out: its legs in flow order.
 *
 * @param id the run's id
 * @param path as {@code runs.lab-supply}
 * @param legs in flow order
 * @param flowM3s wanted flow, if said
 * @param replacesMm diameter of the round pipe it stands in for, if said
 */
public record DuctRun(
        String id, String path, List<DuctLeg> legs, Optional<Double> flowM3s, Optional<Double> replacesMm) {
    /** Copies the list. */
    public DuctRun {
        legs = List.copyOf(legs);
    }

    /** Length along the middle line, corner to corner (mm). */
    public double lengthMm() {
        return legs.stream().mapToDouble(DuctLeg::lengthMm).sum();
    }
}
