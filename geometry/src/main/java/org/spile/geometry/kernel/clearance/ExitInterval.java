package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The straight travels at which a moving solid overlaps a fixed one or comes nearer than a margin.
 *
 * <p>The margin is a Euclidean distance; for one with square corners, as insulation makes, grow either solid by {@link
 * Solid#grownSquare} and ask without a margin. The interval is given closed but its ends are free: there the solids touch, or the margin is just met.
 *
 * @param fromMm travel at which the solids first come too near, in mm; negative if that lies behind
 * @param toMm travel from which they are clear again, in mm
 */
public record ExitInterval(double fromMm, double toMm) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the interval would end before it starts
     */
    public ExitInterval {
        if (!(fromMm <= toMm)) {
            throw new IllegalArgumentException("an interval from " + fromMm + " to " + toMm + " mm has no sense");
        }
    }

    /**
     * The travels that are too near, from the first to the last. For a solid that is not convex there may be clear
     * ones between, see {@link #all}.
     *
     * @param moving the solid that travels
     * @param fixed the solid that stays
     * @param direction direction of travel, any length but 0
     * @param marginMm demanded Euclidean distance in mm, 0 for plain overlap
     * @return the interval, or nothing if the solids stay clear at every travel
     * @throws IllegalArgumentException if the direction has no length or the margin is negative
     */
    public static Optional<ExitInterval> of(Solid moving, Solid fixed, Vector3D direction, double marginMm) {
        List<ExitInterval> all = all(moving, fixed, direction, marginMm);
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new ExitInterval(all.get(0).fromMm, all.get(all.size() - 1).toMm));
    }

    /**
     * The travels that are too near, as separate intervals.
     *
     * @param moving the solid that travels
     * @param fixed the solid that stays
     * @param direction direction of travel, any length but 0
     * @param marginMm demanded Euclidean distance in mm, 0 for plain overlap
     * @return intervals in ascending order; neighbours that only touch stay separate, as their common end is free
     * @throws IllegalArgumentException if the direction has no length or the margin is negative
     */
    public static List<ExitInterval> all(Solid moving, Solid fixed, Vector3D direction, double marginMm) {
        Vector3D unit = unit(direction);
        double margin = GeometryTolerance.notNegative("margin", marginMm);
        List<ExitInterval> found = new ArrayList<>();
        TravelContact contact = new TravelContact();
        for (ConvexCore a : moving.cores()) {
            for (ConvexCore b : fixed.cores()) {
                if (contact.find(a, b, unit.getX(), unit.getY(), unit.getZ(), margin)) {
                    found.add(new ExitInterval(contact.from, contact.to));
                }
            }
        }
        return joined(found);
    }

    static Vector3D unit(Vector3D direction) {
        double length = direction.norm();
        if (!(length > 0) || !Double.isFinite(length)) {
            throw new IllegalArgumentException("direction of travel " + direction + " has no length");
        }
        return direction.multiply(1 / length);
    }

    /** Joins intervals that overlap by more than the contact tolerance. */
    static List<ExitInterval> joined(List<ExitInterval> intervals) {
        List<ExitInterval> sorted = new ArrayList<>(intervals);
        sorted.sort(Comparator.comparingDouble(ExitInterval::fromMm).thenComparingDouble(ExitInterval::toMm));
        List<ExitInterval> joined = new ArrayList<>();
        for (ExitInterval next : sorted) {
            ExitInterval last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && next.fromMm < last.toMm - GeometryTolerance.CONTACT_MM) {
                joined.set(joined.size() - 1, new ExitInterval(last.fromMm, Math.max(last.toMm, next.toMm)));
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }
}
