package org.spile.geometry.house;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Stack;

/**
 * How the points of a part rest on readings: to first order, what tape readings move a point, and by how much.
 *
 * <p>For a box between two faces it is exact; for slopes it is the first-order term.
 */
@FunctionalInterface
public interface Flex {
    /**
     * The coordinate of a point of the part along a direction, as a sum of readings.
     *
     * @param point a point on or in the part, nominal (mm, site frame)
     * @param direction unit vector (site frame)
     * @return a stack whose value is {@code point · direction} and whose layers are the readings that move it
     */
    Stack along(Vector3D point, Vector3D direction);
}
