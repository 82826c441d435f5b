package org.spile.exporters.dxf;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where entities are written to.
 *
 * @param owner handle of the block record that owns them
 * @param unit drawing units for one millimetre on paper: 1 on a sheet, N in a view at 1:N
 * @param shift from the marks' coordinates to the file's (mm)
 * @param paper whether it is the active paper space, whose entities say so
 */
record Space(String owner, double unit, Vector2D shift, boolean paper) {
    Vector2D at(Vector2D point) {
        return point.add(shift);
    }
}
