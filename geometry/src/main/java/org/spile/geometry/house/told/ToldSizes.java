package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The sizes of a thing, as far as they were given (mm).
 *
 * @param longMm fore and aft
 * @param wideMm across
 * @param highMm up
 * @param roundMm diameter, in place of two of the others
 * @param outline plan outline, in place of long and wide
 */
public record ToldSizes(
        Optional<Reading> longMm,
        Optional<Reading> wideMm,
        Optional<Reading> highMm,
        Optional<Reading> roundMm,
        Optional<ToldOutline> outline) {
    /** Nothing was said. */
    public static ToldSizes none() {
        return new ToldSizes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
