package org.spile.geometry.house.duct;

import java.util.List;
import java.util.Optional;

/**
 * A run worked out: its legs in flow order, and the pieces they are made of.
 *
 * @param id the run's id
 * @param path as {@code runs.lab-supply}
 * @param legs in flow order
 * @param pieces what it is made of, in flow order; without gaps from its start to its end
 * @param flowM3s wanted flow, if said
 * @param replacesMm diameter of the round pipe it stands in for, if said
 */
public record DuctRun(
        String id,
        String path,
        List<DuctLeg> legs,
        List<DuctPiece> pieces,
        Optional<Double> flowM3s,
        Optional<Double> replacesMm) {
    /** Copies the lists. */
    public DuctRun {
        pieces = List.copyOf(pieces);
        legs = List.copyOf(legs);
    }

    /** Length along the middle line, corner to corner (mm). */
    public double lengthMm() {
        return legs.stream().mapToDouble(DuctLeg::lengthMm).sum();
    }
}
