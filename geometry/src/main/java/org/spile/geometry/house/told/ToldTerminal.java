package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Rated;
import org.spile.geometry.kernel.measure.Reading;

/**
 * Where air meets a room or the weather, or a device in a duct.
 *
 * @param kind grille, cowl, louvre, hood, chamber, filter, flap or damper
 * @param face of the container it lies in; empty for a device named by a {@code through}
 * @param free open share of its face, 0..1
 * @param out how far it stands out of the face (mm)
 * @param clean drop when clean, and when loaded
 * @param opens pressure at which a flap opens (Pa)
 * @param leak open area when shut (mm2)
 * @param loss a maker's or measured loss coefficient
 */
public record ToldTerminal(
        Placed placed,
        String kind,
        String face,
        Optional<Reading> free,
        Optional<Reading> out,
        Optional<Rated> clean,
        Optional<Rated> loaded,
        Optional<Reading> opens,
        Optional<Reading> leak,
        Optional<Reading> loss) {}
