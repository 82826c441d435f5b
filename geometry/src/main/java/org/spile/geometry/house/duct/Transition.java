package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * A piece from one section to another, folded from sheet; middle to middle or with one side kept.
 *
 * @param leg the leg it is of
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 */
public record Transition(
        DuctLeg leg, double startMm, double endMm, ClearPassage clear, Body outside, List<Intrusion> intrusions)
        implements DuctPiece {
    /** Copies the list. */
    public Transition {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public Transition with(List<Intrusion> others) {
        return new Transition(leg, startMm, endMm, clear, outside, others);
    }

    @Override
    public String word() {
        return "transition";
    }
}
