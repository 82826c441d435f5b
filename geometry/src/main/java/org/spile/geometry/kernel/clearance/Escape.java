package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.Box3;

/** A shift that surely ends any overlap: past the other's bounds, along the axis where that is shortest. */
final class Escape {
    private Escape() {}

    static double pastBounds(Box3 a, Box3 b) {
        double x = Math.min(a.maxX() - b.minX(), b.maxX() - a.minX());
        double y = Math.min(a.maxY() - b.minY(), b.maxY() - a.minY());
        double z = Math.min(a.maxZ() - b.minZ(), b.maxZ() - a.minZ());
        return Math.min(x, Math.min(y, z));
    }
}
