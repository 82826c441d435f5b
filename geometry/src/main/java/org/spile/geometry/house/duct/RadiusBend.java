package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.kernel.solid.Body;

/**
 * A bend round a centre.
 *
 * @param leg the leg after it
 * @param startMm station where it begins
 * @param endMm station where it ends
 * @param clear what is clear inside
 * @param outside over all layers
 * @param intrusions what stands into it
 * @param radiusMm of its middle line
 */
public record RadiusBend(
        DuctLeg leg,
        double startMm,
        double endMm,
        ClearPassage clear,
        Body outside,
        List<Intrusion> intrusions,
        double radiusMm)
        implements Bend {
    /** Copies the list. */
    public RadiusBend {
        intrusions = List.copyOf(intrusions);
    }

    @Override
    public RadiusBend with(List<Intrusion> others) {
        return new RadiusBend(leg, startMm, endMm, clear, outside, others, radiusMm);
    }

    @Override
    public String word() {
        return "bend";
    }
}
