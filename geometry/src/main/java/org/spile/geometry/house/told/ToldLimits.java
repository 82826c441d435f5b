package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Band;
import org.spile.geometry.kernel.measure.Reading;

/**
 * What the user demands.
 *
 * @param clearance round everything (mm)
 * @param headroom in every room that doesn't say its own (mm)
 * @param noise dB(A) where wanted, by room
 * @param flow m3/s by room
 * @param velocity m/s by room
 * @param coupling band by trailer: low and high (kg)
 * @param axle greatest axle load by trailer (kg)
 * @param road greatest width and height on the road (mm), by {@code wide}, {@code high}, {@code long}
 * @param warms how much warmer or colder it gets than when it was built (K)
 * @param damps how much damper or drier its wood gets than when it was built, as a share of its dry mass
 * @param sways how far a unit may shift on the road, every way (mm)
 */
public record ToldLimits(
        Optional<Reading> clearance,
        Optional<Reading> headroom,
        Map<String, Reading> noise,
        Map<String, Reading> flow,
        Map<String, Reading> velocity,
        Map<String, Band> coupling,
        Map<String, Reading> axle,
        Map<String, Reading> road,
        Optional<Reading> warms,
        Optional<Reading> damps,
        Optional<Reading> sways) {
    /** Nothing demanded. */
    public static ToldLimits none() {
        return only(Optional.empty());
    }

    /** Nothing demanded but, if given, a clearance. */
    public static ToldLimits only(Optional<Reading> clearance) {
        return new ToldLimits(
                clearance,
                Optional.empty(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
