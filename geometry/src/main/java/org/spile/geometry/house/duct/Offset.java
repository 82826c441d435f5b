package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * A sheared piece: its ends are parallel and alike, but out of line.
 *
 * @param leg the leg it is of
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 */
public record Offset(
        DuctLeg leg, double startMm, double endMm, ClearPassage clear, Body outside, List<Intrusion> intrusions)
        implements DuctPiece {
    /** Copies the list. */
    public Offset {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public Offset with(List<Intrusion> others) {
        return new Offset(leg, startMm, endMm, clear, outside, others);
    }

    @Override
    public String word() {
        return "offset";
    }
}
