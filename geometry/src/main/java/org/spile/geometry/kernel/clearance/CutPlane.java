package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A plane that cuts, with the axes in which the section is drawn.
 *
 * @param origin a point of the plane, the section's origin, in mm
 * @param right unit vector of the section's first coordinate
 * @param up unit vector of the section's second coordinate, square to {@code right}
 */
public record CutPlane(Vector3D origin, Vector3D right, Vector3D up) {
    /**
     * Checks the axes.
     *
     * @throws IllegalArgumentException if they are not unit vectors square to each other
     */
    public CutPlane {
        if (Math.abs(right.norm() - 1) > 1e-9 || Math.abs(up.norm() - 1) > 1e-9 || Math.abs(right.dot(up)) > 1e-9) {
            throw new IllegalArgumentException(
                    "the axes " + right + " and " + up + " are not unit vectors square to each other");
        }
    }

    /**
     * A horizontal plane, drawn in x and y.
     *
     * @param zMm its height in mm
     * @return the plane
     */
    public static CutPlane horizontal(double zMm) {
        return new CutPlane(Vector3D.of(0, 0, zMm), Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y);
    }

    /**
     * The plane's normal.
     *
     * @return unit vector towards the viewer: {@code right} × {@code up}
     */
    public Vector3D normal() {
        return right.cross(up);
    }
}
