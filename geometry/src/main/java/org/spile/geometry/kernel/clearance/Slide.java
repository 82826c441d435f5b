package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;

/**
 * A slide, one straight leg after the other; its parameter is the way gone (mm).
 *
 * @param legs in the order in which they are gone
 */
public record Slide(List<Leg> legs) implements Travel {
    /**
     * One straight leg.
     *
     * @param way unit vector
     * @param lengthMm not negative
     */
    public record Leg(Vector3D way, double lengthMm) {
        private static final double UNIT = 1e-9;

        /**
         * Checks the leg.
         *
         * @throws IllegalArgumentException if the way isn't a unit vector or the length is negative
         */
        public Leg {
            if (!(Math.abs(way.norm() - 1) <= UNIT)) {
                throw new IllegalArgumentException("the way of a slide must be a unit vector: " + way);
            }
            if (!(lengthMm >= 0) || Double.isInfinite(lengthMm)) {
                throw new IllegalArgumentException("a slide can't go " + lengthMm + " mm");
            }
        }
    }

    /**
     * Takes the legs in order.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Slide {
        legs = List.copyOf(legs);
        if (legs.isEmpty()) {
            throw new IllegalArgumentException("a slide needs at least one leg");
        }
    }

    /** A slide along one way. */
    public static Slide along(Vector3D way, double lengthMm) {
        return new Slide(List.of(new Leg(way, lengthMm)));
    }

    /** How far it goes in all (mm). */
    public double fullMm() {
        return legs.stream().mapToDouble(Leg::lengthMm).sum();
    }

    @Override
    public Move at(double parameter) {
        return Move.shift(shift(parameter));
    }

    private Vector3D shift(double parameter) {
        Vector3D shift = Vector3D.ZERO;
        double left = parameter;
        for (int i = 0; i < legs.size(); i++) {
            boolean last = i + 1 == legs.size();
            double here = last ? left : Math.min(left, legs.get(i).lengthMm());
            shift = shift.add(legs.get(i).way().multiply(here));
            left -= here;
            if (left <= 0) {
                break;
            }
        }
        return shift;
    }

    @Override
    public double speedMm(Box3 bounds, double strayMm) {
        return 1;
    }

    /** Along one leg a reach is linear, so it is greatest at an end. */
    @Override
    public double reachMm(ConvexCore core, double nx, double ny, double nz, double from, double to) {
        Vector3D n = Vector3D.of(nx, ny, nz);
        double most = Double.NEGATIVE_INFINITY;
        for (double knot : knots(from, to)) {
            most = Math.max(most, shift(knot).dot(n));
        }
        return core.reach(nx, ny, nz) + most;
    }

    @Override
    public List<Double> knots(double from, double to) {
        List<Double> knots = new ArrayList<>(List.of(from));
        double gone = 0;
        for (Leg leg : legs) {
            gone += leg.lengthMm();
            if (gone > from && gone < to) {
                knots.add(gone);
            }
        }
        knots.add(to);
        return knots;
    }
}
