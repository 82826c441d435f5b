package org.spile.geometry.house;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.duct.Section;

/**
 * Where air or a service enters or leaves a thing: a spigot, a port, a terminal's opening.
 *
 * @param path as {@code units.cooler.spigots.outlet}
 * @param thing path of the thing it belongs to
 * @param title in people's words, as "outlet of cooler"
 * @param trailer id of the trailer it is on
 * @param centre its middle (site frame, mm)
 * @param outward the way out of the thing through it; for a terminal, the way into the duct
 * @param side unit vector along its wide side
 * @param section its clear opening; absent for a port without a size
 */
public record Mouth(
        String path,
        String thing,
        String title,
        String trailer,
        Vector3D centre,
        Vector3D outward,
        Vector3D side,
        Optional<Section> section) {}
