package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A volume people use.
 *
 * @param floor finished floor above the deck; a reading of 0 if unsaid (mm)
 * @param ceiling absent: the roof, or the ceiling of a cavity over it
 * @param headroom demanded standing height (mm)
 * @param heat what it gives off (W)
 * @param steam water given off to its air (kg/s)
 */
public record ToldRoom(
        Placed placed,
        Reading floor,
        Optional<ToldSurface> ceiling,
        Optional<Reading> headroom,
        Map<String, ToldOpening> openings,
        Optional<Reading> people,
        Optional<Reading> heat,
        Optional<Reading> steam) {}
