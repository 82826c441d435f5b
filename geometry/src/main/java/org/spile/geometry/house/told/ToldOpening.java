package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A door, window or hole in a room's face; with a hinge or a slide it is a mover too.
 *
 * @param placed its {@code at} counts from the room's faces
 * @param face the room's face it lies in
 * @param to the room beyond, or {@code outside}
 * @param undercut gap below the leaf (mm)
 * @param leak open area when shut (mm2)
 * @param glass glazing word, or empty
 */
public record ToldOpening(
        Placed placed,
        String face,
        String to,
        Optional<ToldHinge> hinge,
        Optional<ToldSlide> slides,
        Optional<Reading> undercut,
        Optional<Reading> leak,
        String glass) {}
