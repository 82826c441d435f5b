package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Where a pair is nearest, as plain numbers: a point on A, one on B, and a unit direction from A to B. Filled anew. */
final class Witness {
    double ax;
    double ay;
    double az;
    double bx;
    double by;
    double bz;
    double nx;
    double ny;
    double nz;

    void onA(double x, double y, double z) {
        ax = x;
        ay = y;
        az = z;
    }

    void onB(double x, double y, double z) {
        bx = x;
        by = y;
        bz = z;
    }

    void direction(double x, double y, double z) {
        nx = x;
        ny = y;
        nz = z;
    }

    /** Moves the points out of their cores, A's by its radius along a unit vector and B's by its own against it. */
    void outward(double x, double y, double z, double radiusA, double radiusB) {
        ax += radiusA * x;
        ay += radiusA * y;
        az += radiusA * z;
        bx -= radiusB * x;
        by -= radiusB * y;
        bz -= radiusB * z;
    }

    static double coordinate(int axis, double x, double y, double z) {
        return switch (axis) {
            case 0 -> x;
            case 1 -> y;
            case 2 -> z;
            default -> throw new IllegalArgumentException("axis " + axis + " is none of 0 (x), 1 (y), 2 (z)");
        };
    }

    Gap gap(double lowerMm, double upperMm) {
        return new Gap(
                lowerMm, upperMm, Vector3D.of(ax, ay, az), Vector3D.of(bx, by, bz), Vector3D.of(nx, ny, nz), 0, 0);
    }
}
