package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * A piece with one section from end to end, square to both.
 *
 * @param leg the leg it is of
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 */
public record Straight(
        DuctLeg leg, double startMm, double endMm, ClearPassage clear, Body outside, List<Intrusion> intrusions)
        implements DuctPiece {
    /** Copies the list. */
    public Straight {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public Straight with(List<Intrusion> others) {
        return new Straight(leg, startMm, endMm, clear, outside, others);
    }

    @Override
    public String word() {
        return "straight";
    }
}
