package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * Where a run leaves or joins the side of another: a collar through that run's wall.
 *
 * @param leg the leg it is of
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 * @param run path of the other run
 * @param side the side of it
 */
public record Takeoff(
        DuctLeg leg,
        double startMm,
        double endMm,
        ClearPassage clear,
        Body outside,
        List<Intrusion> intrusions,
        String run,
        String side)
        implements DuctPiece {
    /** Copies the list. */
    public Takeoff {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public Takeoff with(List<Intrusion> others) {
        return new Takeoff(leg, startMm, endMm, clear, outside, others, run, side);
    }

    @Override
    public String word() {
        return "takeoff";
    }
}
