package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The travels at which two convex cores without discs overlap, exactly: every deciding axis gives one linear
 * inequality in the travel, and an axis at right angles to it says yes or no for all travels.
 *
 * <p>Whether the cores meet at all is judged with the contact tolerance, since touching is not overlap; the ends
 * themselves are then taken without it. Compare the range of contact along a direction of Choi and others, Computer
 * Aided Geometric Design 28 (2011).
 */
final class TravelAxes implements AxisVisitor {
    /** Below this slope an axis counts as at right angles: over 1 km it gains less than the contact tolerance. */
    private static final double SQUARE = 1e-12;

    /** From this slope on an end moves less than 1 µm within the contact tolerance. */
    private static final double STEEP = 1e-3;

    private final DecidingAxes axes = new DecidingAxes();
    private double ux;
    private double uy;
    private double uz;
    private boolean never;
    private double surelyFrom;
    private double surelyTo;
    private double from;
    private double to;
    private double steepFrom;
    private double steepTo;

    /** Finds the interval for A moving along a unit direction; false if the cores never overlap. */
    boolean find(ConvexCore a, ConvexCore b, double dx, double dy, double dz) {
        ux = dx;
        uy = dy;
        uz = dz;
        never = false;
        surelyFrom = Double.NEGATIVE_INFINITY;
        surelyTo = Double.POSITIVE_INFINITY;
        steepFrom = Double.NEGATIVE_INFINITY;
        steepTo = Double.POSITIVE_INFINITY;
        axes.visit(a, 0, 0, 0, b, this);
        from = Math.max(from, steepFrom);
        to = Math.min(to, steepTo);
        return !never && surelyFrom < surelyTo;
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    @Override
    public void axis(double x, double y, double z, double bAhead, double bBehind) {
        double slope = x * ux + y * uy + z * uz;
        double steep = Math.abs(slope);
        double slack = GeometryTolerance.CONTACT_MM;
        if (steep < SQUARE) {
            never |= bAhead > -slack || bBehind > -slack;
            return;
        }
        // Overlap along the axis: bAhead - t·slope < 0 and bBehind + t·slope < 0.
        double enter = (slope > 0 ? bAhead : bBehind) / steep;
        double leave = -(slope > 0 ? bBehind : bAhead) / steep;
        if (enter + slack / steep > surelyFrom) {
            surelyFrom = enter + slack / steep;
            from = enter;
        }
        if (leave - slack / steep < surelyTo) {
            surelyTo = leave - slack / steep;
            to = leave;
        }
        if (steep > STEEP) {
            steepFrom = Math.max(steepFrom, enter);
            steepTo = Math.min(steepTo, leave);
        }
    }
}
