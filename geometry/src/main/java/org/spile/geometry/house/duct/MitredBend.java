package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * A bend cut on the plane halfway between its legs, plain or with vanes.
 *
 * @param leg the leg after it
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 * @param cornerMm where its two legs meet, along its path
 * @param vanes how many vanes stand in it
 */
public record MitredBend(
        DuctLeg leg,
        double startMm,
        double endMm,
        ClearPassage clear,
        Body outside,
        List<Intrusion> intrusions,
        double cornerMm,
        int vanes)
        implements Bend {
    /** Copies the list. */
    public MitredBend {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public MitredBend with(List<Intrusion> others) {
        return new MitredBend(leg, startMm, endMm, clear, outside, others, cornerMm, vanes);
    }

    @Override
    public String word() {
        return "mitred bend";
    }
}
