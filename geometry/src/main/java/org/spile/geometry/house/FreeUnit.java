package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A unit that may be put elsewhere: its house without whatever would have to be made anew then.
 */
public interface FreeUnit {
    /** The unit's id. */
    String id();

    /** The house without what joins the unit, hangs from it or starts at it; the unit placed by coordinates. */
    House house();

    /** The paths of what was left out, in the order of the file. */
    List<String> leftOut();

    /** The frame that positions are in: the unit's trailer. */
    String trailer();

    /** What it is placed in: the id of a cavity, a room or a trailer. */
    String in();

    /** The middle of its first body's box where the file puts it, in its trailer's frame (mm). */
    Vector3D place();

    /** How far its front is turned from the trailer's forward to the left (degrees, from 0 up to 360). */
    double yawDeg();

    /**
     * How high it comes to stand, wherever in a window the middle of its box is put.
     *
     * @param minX least x of the window, in the trailer's frame (mm)
     * @param minY least y
     * @param maxX greatest x
     * @param maxY greatest y
     * @param alongXMm the extent of its box along x, as turned
     * @param alongYMm the extent of its box along y, as turned
     * @return pieces that cover the window, or nothing if its height can't be said at every place
     */
    Optional<List<RestingPlace>> resting(
            double minX, double minY, double maxX, double maxY, double alongXMm, double alongYMm);
}
