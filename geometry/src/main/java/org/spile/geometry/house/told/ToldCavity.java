package org.spile.geometry.house.told;

import java.util.Map;
import java.util.Optional;

/**
 * A space meant for services.
 *
 * @param over the room whose outline and finished floor it takes, if said
 * @param below the surface under it: a ceiling of the room below, or a floor; which of both is in {@code belowIsCeiling}
 * @param top the surface above it; absent: the roof
 * @param sides by face word: left, right, rear, front, where lined or not plumb
 * @param air the space whose air gets in; empty: the room's
 */
public record ToldCavity(
        Placed placed,
        Optional<String> over,
        Optional<ToldSurface> below,
        boolean belowIsCeiling,
        Optional<ToldSurface> top,
        Map<String, ToldSurface> sides,
        String air) {}
