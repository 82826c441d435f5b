package org.spile.geometry.house.spot;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A point whose coordinates know what they rest on (mm).
 *
 * @param x coordinate
 * @param y coordinate
 * @param z coordinate
 */
public record Spot(Stack x, Stack y, Stack z) {
    /** Nowhere else than at the frame's origin. */
    public static final Spot ORIGIN = new Spot(Stack.ZERO, Stack.ZERO, Stack.ZERO);

    /** A fixed point. */
    public static Spot of(Vector3D point) {
        return new Spot(Stack.constant(point.getX()), Stack.constant(point.getY()), Stack.constant(point.getZ()));
    }

    /** A length along a fixed direction. */
    public static Spot along(Vector3D direction, Stack length) {
        return new Spot(length.times(direction.getX()), length.times(direction.getY()), length.times(direction.getZ()));
    }

    /** The nominal point. */
    public Vector3D at() {
        return Vector3D.of(x.valueMm(), y.valueMm(), z.valueMm());
    }

    /** The coordinate along an axis. */
    public Stack get(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** This point with another coordinate along an axis. */
    public Spot with(Axis axis, Stack coordinate) {
        return switch (axis) {
            case X -> new Spot(coordinate, y, z);
            case Y -> new Spot(x, coordinate, z);
            case Z -> new Spot(x, y, coordinate);
        };
    }

    /** This point and another, as vectors. */
    public Spot plus(Spot other) {
        return new Spot(x.plus(other.x), y.plus(other.y), z.plus(other.z));
    }

    /** This point less another, as vectors. */
    public Spot minus(Spot other) {
        return new Spot(x.minus(other.x), y.minus(other.y), z.minus(other.z));
    }

    /** This point moved by a length along a fixed direction. */
    public Spot plus(Vector3D direction, Stack length) {
        return plus(along(direction, length));
    }

    /** This point times a number, as a vector. */
    public Spot times(double factor) {
        return new Spot(x.times(factor), y.times(factor), z.times(factor));
    }

    /** The share {@code t} of the way to another point. */
    public Spot toward(Spot other, double t) {
        return times(1 - t).plus(other.times(t));
    }

    /** The coordinate along a fixed direction. */
    public Stack dot(Vector3D direction) {
        return x.times(direction.getX()).plus(y.times(direction.getY())).plus(z.times(direction.getZ()));
    }

    /** These coordinates with exactly these values. */
    public Spot exactly(Vector3D point) {
        return new Spot(
                FirstOrder.exactly(point.getX(), x),
                FirstOrder.exactly(point.getY(), y),
                FirstOrder.exactly(point.getZ(), z));
    }
}
