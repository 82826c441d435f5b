package org.spile.geometry.house.duct;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One leg of a run, corner to corner on its middle line, in the frame of the trailer it belongs to (mm).
 *
 * @param path as {@code runs.lab-supply.path[3]}
 * @param trailer id of the trailer whose frame the points are in
 * @param axis unit vector the leg goes: its sections are square to it also where it slants
 * @param from start of the middle line
 * @param to end of the middle line
 * @param start clear section at its start
 * @param end clear section at its end; equal unless the leg is a transition
 * @param wallMm how far its outside stands out from the clear section, on every side: all layers, mm
 * @param flush the side a transition keeps, in its trailer's words; empty: middle to middle
 * @param through devices in it, in flow order
 * @param parts what comes out when the trailers part; empty if nothing
 * @param bend radius at the corner before it (mm); empty: mitred
 * @param vanes the vanes in the corner before it; none if it has none
 * @param startSides the sides of its start section with their readings
 * @param endSides the sides of its end section with theirs
 */
public record DuctLeg(
        String path,
        String trailer,
        Vector3D axis,
        Vector3D from,
        Vector3D to,
        Section start,
        Section end,
        double wallMm,
        String flush,
        List<String> through,
        String parts,
        Optional<Double> bend,
        Vanes vanes,
        Sides startSides,
        Sides endSides) {
    /** Copies the list. */
    public DuctLeg {
        through = List.copyOf(through);
    }

    /** Length along the middle line (mm). */
    public double lengthMm() {
        return to.subtract(from).norm();
    }

    /** Whether its section changes on the way. */
    public boolean transition() {
        return !start.equals(end);
    }
}
