package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The travels at which one convex core comes nearer to another than a margin: one object per thread, no allocation.
 *
 * <p>Sharp cores without margin go by {@link TravelAxes}. Otherwise the interval is closed in from outside, from both
 * ends: with lower bound d and direction n at travel t, no travel up to t + (d − m)/(n·u) comes nearer than m, because
 * distance is convex in t (conservative advancement: Mirtich, Impulse-based Dynamic Simulation, 1996, section 2.3). No
 * closing speed means no contact ahead. Whether anything lies between the ends is settled by minimising the convex
 * distance between them, never by trying whether a travel is blocked.
 */
final class TravelContact {
    private static final int MOST_STEPS = 200;

    private final TravelAxes axes = new TravelAxes();
    private final ConvexDistance distance = new ConvexDistance();
    private final ConvexDepth depth = new ConvexDepth();
    private ConvexCore a;
    private ConvexCore b;
    private double ux;
    private double uy;
    private double uz;
    private double nearMm;

    /** Lower bound of the signed core distance, and how fast a further travel closes it. */
    private double value;

    private double closing;

    double from;
    double to;

    /** Finds the interval for A moving along a unit direction; false if A never comes nearer than the margin. */
    boolean find(ConvexCore moving, ConvexCore fixed, double dx, double dy, double dz, double marginMm) {
        a = moving;
        b = fixed;
        ux = dx;
        uy = dy;
        uz = dz;
        nearMm = marginMm + moving.roundMm() + fixed.roundMm();
        boolean sharp = moving.discMm() == 0 && fixed.discMm() == 0;
        if (sharp && nearMm <= GeometryTolerance.ARITHMETIC_MM) {
            boolean found = axes.find(moving, fixed, dx, dy, dz);
            from = axes.from();
            to = axes.to();
            return found;
        }
        double pad = nearMm + 1;
        double start = -b.reach(-ux, -uy, -uz) - a.reach(ux, uy, uz) - pad;
        double end = b.reach(ux, uy, uz) + a.reach(-ux, -uy, -uz) + pad;
        from = closeIn(start, 1);
        if (Double.isNaN(from)) {
            return false;
        }
        to = closeIn(end, -1);
        return !Double.isNaN(to) && from < to && comesNearer(from, to);
    }

    /** Advances from a travel that is surely clear; NaN if nothing lies ahead. */
    private double closeIn(double start, int sense) {
        double t = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            measureApart(t, step > 0);
            double above = value - nearMm;
            if (above <= GeometryTolerance.ARITHMETIC_MM) {
                return t;
            }
            double speed = sense * closing;
            if (speed <= 1e-12 || above > speed * 4 * GeometryTolerance.LARGEST_MM) {
                return Double.NaN;
            }
            double next = t + sense * above / speed;
            if (next == t) {
                return t;
            }
            t = next;
        }
        return t;
    }

    private void measureApart(double t, boolean again) {
        if (again) {
            distance.measureAgain(a, t * ux, t * uy, t * uz, b);
        } else {
            distance.measure(a, t * ux, t * uy, t * uz, b);
        }
        value = distance.lower;
        closing = distance.nx * ux + distance.ny * uy + distance.nz * uz;
    }

    /** Minimises the signed distance between the ends, until it is surely short of the margin or surely not. */
    private boolean comesNearer(double low, double high) {
        double enough = nearMm - GeometryTolerance.CONTACT_MM;
        for (int step = 0; step < 60 && high - low > GeometryTolerance.CONTACT_MM; step++) {
            double t = (low + high) / 2;
            measureApart(t, false);
            if (distance.overlap || distance.upper <= GeometryTolerance.ARITHMETIC_MM) {
                depth.measure(a, t * ux, t * uy, t * uz, b);
                value = depth.separation;
                closing = depth.nx * ux + depth.ny * uy + depth.nz * uz;
            }
            if (value < enough) {
                return true;
            }
            if (value - Math.abs(closing) * (high - low) / 2 >= enough) {
                return false;
            }
            if (closing > 0) {
                low = t;
            } else {
                high = t;
            }
        }
        return false;
    }
}
