package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;

/**
 * A turn about a fixed pin; its parameter is the angle, right-handed about the axis (deg).
 *
 * @param pin a point of the pin (mm)
 * @param axis unit vector along it
 */
public record Hinge(Vector3D pin, Vector3D axis) implements Travel {
    private static final double UNIT = 1e-9;

    /**
     * Checks the axis.
     *
     * @throws IllegalArgumentException if it isn't a unit vector
     */
    public Hinge {
        if (!(Math.abs(axis.norm() - 1) <= UNIT)) {
            throw new IllegalArgumentException("the axis of a hinge must be a unit vector: " + axis);
        }
    }

    @Override
    public Move at(double parameter) {
        return Move.about(pin, axis, Math.toRadians(parameter));
    }

    /** The farthest corner from the pin moves fastest (radius times angle). */
    @Override
    public double speedMm(Box3 bounds, double strayMm) {
        double radius = 0;
        for (int corner = 0; corner < 8; corner++) {
            Vector3D at = Vector3D.of(
                    (corner & 1) == 0 ? bounds.minX() : bounds.maxX(),
                    (corner & 2) == 0 ? bounds.minY() : bounds.maxY(),
                    (corner & 4) == 0 ? bounds.minZ() : bounds.maxZ());
            radius = Math.max(radius, axis.cross(at.subtract(pin)).norm());
        }
        return Math.toRadians(radius + strayMm);
    }

    /**
     * With a corner's arm r = along + across, its coordinate in direction n is n·pin + n·along + n·across cos + n·(axis x
     * across) sin of the angle: greatest where the angle of those two is reached, or at an end of the range.
     */
    @Override
    public double reachMm(ConvexCore core, double nx, double ny, double nz, double from, double to) {
        Vector3D n = Vector3D.of(nx, ny, nz);
        double low = Math.toRadians(from);
        double high = Math.toRadians(to);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < core.count(); i++) {
            Vector3D arm = Vector3D.of(core.x(i), core.y(i), core.z(i)).subtract(pin);
            Vector3D along = axis.multiply(arm.dot(axis));
            Vector3D across = arm.subtract(along);
            double still = n.dot(pin) + n.dot(along);
            double cosine = n.dot(across);
            double sine = n.dot(axis.cross(across));
            most = Math.max(most, still + greatest(cosine, sine, low, high));
        }
        return most + discMm(core, n, low, high);
    }

    /** The greatest of c cos + s sin over a range of angles. */
    private static double greatest(double cosine, double sine, double low, double high) {
        double peak = Math.atan2(sine, cosine);
        double turns = Math.ceil((low - peak) / (2 * Math.PI));
        if (peak + 2 * Math.PI * turns <= high) {
            return Math.hypot(cosine, sine);
        }
        return Math.max(cosine * Math.cos(low) + sine * Math.sin(low), cosine * Math.cos(high) + sine * Math.sin(high));
    }

    /** A disc's own reach changes by no more than its radius times the angle. */
    private double discMm(ConvexCore core, Vector3D n, double low, double high) {
        if (core.discMm() == 0) {
            return 0;
        }
        double middle = (low + high) / 2;
        Vector3D back = Move.about(Vector3D.ZERO, axis, -middle).applyDirection(n);
        double there = core.discReach(back.getX(), back.getY(), back.getZ());
        return Math.min(core.discMm(), there + core.discMm() * (high - low) / 2);
    }

    @Override
    public List<Double> knots(double from, double to) {
        return List.of(from, to);
    }
}
