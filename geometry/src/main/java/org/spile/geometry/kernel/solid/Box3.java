package org.spile.geometry.kernel.solid;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * An axis-parallel box that encloses something; it may be flat.
 *
 * @param minX least x in mm
 * @param minY least y in mm
 * @param minZ least z in mm
 * @param maxX greatest x in mm, not less than {@code minX}
 * @param maxY greatest y in mm, not less than {@code minY}
 * @param maxZ greatest z in mm, not less than {@code minZ}
 */
public record Box3(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
    /**
     * Checks the order of the sides.
     *
     * @throws IllegalArgumentException if a least coordinate is above the greatest, or one is out of range
     */
    public Box3 {
        minX = GeometryTolerance.inRange("x", minX);
        minY = GeometryTolerance.inRange("y", minY);
        minZ = GeometryTolerance.inRange("z", minZ);
        maxX = GeometryTolerance.inRange("x", maxX);
        maxY = GeometryTolerance.inRange("y", maxY);
        maxZ = GeometryTolerance.inRange("z", maxZ);
        if (minX > maxX || minY > maxY || minZ > maxZ) {
            throw new IllegalArgumentException("a box from (" + minX + ", " + minY + ", " + minZ + ") to (" + maxX
                    + ", " + maxY + ", " + maxZ + ") mm has a least coordinate above its greatest");
        }
    }

    /**
     * The smallest box round two.
     *
     * @param other the other box
     * @return the box that encloses both
     */
    public Box3 with(Box3 other) {
        return new Box3(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.min(minZ, other.minZ),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY),
                Math.max(maxZ, other.maxZ));
    }

    /**
     * Grows every side outwards.
     *
     * @param growthMm growth in mm, not negative
     * @return the grown box
     * @throws IllegalArgumentException if the growth is negative or out of range
     */
    public Box3 grown(double growthMm) {
        double g = GeometryTolerance.notNegative("growth", growthMm);
        return new Box3(minX - g, minY - g, minZ - g, maxX + g, maxY + g, maxZ + g);
    }

    /**
     * The distance between two boxes: a lower bound for the distance of what they enclose.
     *
     * @param other the other box
     * @return mm, 0 if they touch or overlap
     */
    public double gapTo(Box3 other) {
        double x = Math.max(0, Math.max(minX - other.maxX, other.minX - maxX));
        double y = Math.max(0, Math.max(minY - other.maxY, other.minY - maxY));
        double z = Math.max(0, Math.max(minZ - other.maxZ, other.minZ - maxZ));
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * The middle.
     *
     * @return point in mm
     */
    public Vector3D middle() {
        return Vector3D.of((minX + maxX) / 2, (minY + maxY) / 2, (minZ + maxZ) / 2);
    }
}
