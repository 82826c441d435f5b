package org.spile.geometry.kernel.clearance;

/** Receives the ranges that two convex cores cover along a unit direction. */
@FunctionalInterface
interface AxisVisitor {
    /**
     * Takes one direction.
     *
     * @param x unit direction
     * @param y unit direction
     * @param z unit direction
     * @param bAhead least of B less greatest of A: the separation with B ahead
     * @param bBehind least of A less greatest of B: the separation with B behind
     */
    void axis(double x, double y, double z, double bAhead, double bBehind);
}
