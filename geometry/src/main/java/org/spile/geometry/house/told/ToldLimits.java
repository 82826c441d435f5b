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
 */
public record ToldLimits(
        Optional<Reading> clearance,
        Optional<Reading> headroom,
        Map<String, Reading> noise,
        Map<String, Reading> flow,
        Map<String, Reading> velocity,
        Map<String, Band> coupling,
        Map<String, Reading> axle,
        Map<String, Reading> road) {}
