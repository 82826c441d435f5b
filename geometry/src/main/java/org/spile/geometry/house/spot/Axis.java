package org.spile.geometry.house.spot;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** An axis of a frame: forward, left, up. */
public enum Axis {
    /** Fore and aft, forward positive. */
    X("long"),
    /** Across, left positive. */
    Y("wide"),
    /** Upright, up positive. */
    Z("high");

    private final String size;

    Axis(String size) {
        this.size = size;
    }

    /** Unit vector. */
    public Vector3D unit() {
        return switch (this) {
            case X -> Vector3D.Unit.PLUS_X;
            case Y -> Vector3D.Unit.PLUS_Y;
            case Z -> Vector3D.Unit.PLUS_Z;
        };
    }

    /** The word for a size along it: long, wide or high. */
    public String size() {
        return size;
    }

    /** The component of a vector. */
    public double of(Vector3D vector) {
        return switch (this) {
            case X -> vector.getX();
            case Y -> vector.getY();
            case Z -> vector.getZ();
        };
    }

    /** The axis along which a vector is longest; the first of equals. */
    public static Axis nearest(Vector3D vector) {
        double x = Math.abs(vector.getX());
        double y = Math.abs(vector.getY());
        double z = Math.abs(vector.getZ());
        return x >= y && x >= z ? X : y >= z ? Y : Z;
    }
}
