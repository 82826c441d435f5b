package org.spile.geometry.house.duct;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A corner cut on the plane halfway between two legs at a right angle, seen from one of them.
 *
 * @param corner where the middle lines meet
 * @param out unit vector along this leg, towards the corner
 * @param other unit vector along the other leg, away from the corner
 * @param halfMm half the clear size in the plane of the bend, the same on both legs (mm)
 */
record Mitre(Vector3D corner, Vector3D out, Vector3D other, double halfMm) {
    /** The corner that the air turns round. */
    Vector3D inner() {
        return corner.subtract(out.multiply(halfMm)).add(other.multiply(halfMm));
    }

    /** A point of a section square to this leg through the corner, moved along the leg onto the plane of the mitre. */
    Vector3D cut(Vector3D point) {
        return point.subtract(out.multiply(point.subtract(corner).dot(other)));
    }

    /**
     * Normal of the plane through a place on the middle line and the inner corner: square to the leg where it leaves the
     * straight, the plane of the mitre at the corner.
     */
    Vector3D normal(Vector3D middle) {
        Vector3D kept = out.cross(other);
        Vector3D normal = inner().subtract(middle).cross(kept);
        return normal.dot(out) < 0 ? normal.negate() : normal;
    }
}
