package org.spile.geometry.house.told;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A ceiling, floor, top, roof or side, where the tape touched it.
 *
 * @param path as {@code cavities.lobby-top.ceiling}
 * @param at its height (or, for a side, its distance), if level; absent if inferred or a profile
 * @param profile the points it runs through, if it slopes; else empty
 * @param linings what is still to be fixed in front of it; from the inside of the space to the surface
 * @param layers what lies behind it already; from the inside out
 * @param drop how far a ceiling or floor is lowered; a reading of 0 at {@code path.drop} if unsaid; absent of what nobody lowers (mm)
 * @param sag how far it may hang through in use, if anybody said (mm)
 */
public record ToldSurface(
        String path,
        Optional<Reading> at,
        List<ProfilePoint> profile,
        List<ToldLayer> linings,
        List<ToldLayer> layers,
        Optional<Reading> drop,
        Optional<Reading> sag) {
    /** Copies the lists. */
    public ToldSurface {
        profile = List.copyOf(profile);
        linings = List.copyOf(linings);
        layers = List.copyOf(layers);
    }
}
