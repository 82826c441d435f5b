package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * The plane in which a thing is pushed about: how high it is carried at every place of the plan.
 *
 * @param atMm how far it is lifted at the place (0, 0)
 * @param perX how much higher for each mm along x; 0 if that way is level
 * @param perY how much higher for each mm along y
 */
public record GlidePlane(double atMm, double perX, double perY) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if a number is not finite or the plane is steeper than 10 in 1
     */
    public GlidePlane {
        atMm = GeometryTolerance.inRange("lift", atMm);
        if (!(Math.abs(perX) <= 10) || !(Math.abs(perY) <= 10)) {
            throw new IllegalArgumentException(
                    "a thing glides on a plane no steeper than 10 in 1, not " + perX + ", " + perY);
        }
    }

    /**
     * The same height everywhere.
     *
     * @param atMm how far the thing is lifted
     * @return the plane
     */
    public static GlidePlane level(double atMm) {
        return new GlidePlane(atMm, 0, 0);
    }

    /**
     * Whether it is the same height everywhere.
     *
     * @return true if neither way slopes
     */
    public boolean isLevel() {
        return perX == 0 && perY == 0;
    }

    /**
     * The lift at a place.
     *
     * @param x along x in mm
     * @param y along y in mm
     * @return mm
     */
    public double at(double x, double y) {
        return atMm + perX * x + perY * y;
    }
}
