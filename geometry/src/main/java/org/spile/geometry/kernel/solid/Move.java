package org.spile.geometry.kernel.solid;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Turn;

/**
 * A rigid motion: a rotation followed by a shift.
 *
 * <p>Angles in radians, right-handed; shifts in mm. Quarter turns are exact to the last bit. Immutable.
 */
public final class Move {
    private static final Move IDENTITY = new Move(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, 0, 0, 0);

    private final double[] r;
    private final double dx;
    private final double dy;
    private final double dz;

    private Move(double[] rotation, double dx, double dy, double dz) {
        this.r = rotation;
        this.dx = GeometryTolerance.inRange("shift in x", dx);
        this.dy = GeometryTolerance.inRange("shift in y", dy);
        this.dz = GeometryTolerance.inRange("shift in z", dz);
    }

    /**
     * No motion at all.
     *
     * @return the identity
     */
    public static Move identity() {
        return IDENTITY;
    }

    /**
     * A straight shift.
     *
     * @param dx mm along x
     * @param dy mm along y
     * @param dz mm along z
     * @return the shift
     * @throws IllegalArgumentException if a component is out of range
     */
    public static Move shift(double dx, double dy, double dz) {
        return new Move(IDENTITY.r, dx, dy, dz);
    }

    /**
     * A straight shift.
     *
     * @param by the shift in mm
     * @return the shift
     * @throws IllegalArgumentException if a component is out of range
     */
    public static Move shift(Vector3D by) {
        return shift(by.getX(), by.getY(), by.getZ());
    }

    /**
     * A turn about the vertical through a point.
     *
     * @param yawRad angle, counter-clockwise seen from above
     * @param at a point of the axis in mm
     * @return the turn
     * @throws IllegalArgumentException if the angle is not finite
     */
    public static Move turn(double yawRad, Vector3D at) {
        double c = Turn.cos(yawRad);
        double s = Turn.sin(yawRad);
        return aroundPoint(new double[] {c, -s, 0, s, c, 0, 0, 0, 1}, at);
    }

    /**
     * A turn about any axis (Rodrigues 1840).
     *
     * @param axisPoint a point of the axis in mm
     * @param axisDirection the axis' direction, any length but 0
     * @param angleRad angle, right-handed about the direction
     * @return the turn
     * @throws IllegalArgumentException if the direction has no length or the angle is not finite
     */
    public static Move about(Vector3D axisPoint, Vector3D axisDirection, double angleRad) {
        double length = axisDirection.norm();
        if (!(length > 0) || !Double.isFinite(length)) {
            throw new IllegalArgumentException("axis direction " + axisDirection + " has no length");
        }
        double x = axisDirection.getX() / length;
        double y = axisDirection.getY() / length;
        double z = axisDirection.getZ() / length;
        double c = Turn.cos(angleRad);
        double s = Turn.sin(angleRad);
        double v = 1 - c;
        double[] rotation = {
            c + x * x * v,
            x * y * v - z * s,
            x * z * v + y * s,
            y * x * v + z * s,
            c + y * y * v,
            y * z * v - x * s,
            z * x * v - y * s,
            z * y * v + x * s,
            c + z * z * v
        };
        return aroundPoint(rotation, axisPoint);
    }

    /**
     * This motion and then another.
     *
     * @param next what follows
     * @return both in one
     */
    public Move then(Move next) {
        double[] product = new double[9];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                double sum = 0;
                for (int k = 0; k < 3; k++) {
                    sum += next.r[3 * row + k] * r[3 * k + column];
                }
                product[3 * row + column] = sum;
            }
        }
        Vector3D shift = next.apply(Vector3D.of(dx, dy, dz));
        return new Move(product, shift.getX(), shift.getY(), shift.getZ());
    }

    /**
     * The motion that undoes this one.
     *
     * @return the inverse
     */
    public Move inverse() {
        double[] t = {r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]};
        return new Move(
                t,
                -(t[0] * dx + t[1] * dy + t[2] * dz),
                -(t[3] * dx + t[4] * dy + t[5] * dz),
                -(t[6] * dx + t[7] * dy + t[8] * dz));
    }

    /**
     * Moves a point.
     *
     * @param point in mm
     * @return the moved point
     */
    public Vector3D apply(Vector3D point) {
        Vector3D turned = applyDirection(point);
        return Vector3D.of(turned.getX() + dx, turned.getY() + dy, turned.getZ() + dz);
    }

    /**
     * Turns a direction.
     *
     * @param direction any vector
     * @return the turned vector, of the same length
     */
    public Vector3D applyDirection(Vector3D direction) {
        double x = direction.getX();
        double y = direction.getY();
        double z = direction.getZ();
        return Vector3D.of(turnedX(x, y, z), turnedY(x, y, z), turnedZ(x, y, z));
    }

    double turnedX(double x, double y, double z) {
        return r[0] * x + r[1] * y + r[2] * z;
    }

    double turnedY(double x, double y, double z) {
        return r[3] * x + r[4] * y + r[5] * z;
    }

    double turnedZ(double x, double y, double z) {
        return r[6] * x + r[7] * y + r[8] * z;
    }

    /**
     * Whether vertical lines stay vertical: a yaw, or a yaw after a turn upside down.
     *
     * @return true if upright things stay upright
     */
    public boolean keepsVertical() {
        return Math.abs(r[2]) < 1e-15 && Math.abs(r[5]) < 1e-15 && Math.abs(r[6]) < 1e-15 && Math.abs(r[7]) < 1e-15;
    }

    /**
     * An entry of the rotation matrix.
     *
     * @param row 0, 1 or 2
     * @param column 0, 1 or 2
     * @return the entry
     */
    public double rotation(int row, int column) {
        return r[3 * row + column];
    }

    /**
     * The shift after the rotation.
     *
     * @return mm
     */
    public Vector3D shift() {
        return Vector3D.of(dx, dy, dz);
    }

    @Override
    public String toString() {
        return "Move[" + r[0] + " " + r[1] + " " + r[2] + "; " + r[3] + " " + r[4] + " " + r[5] + "; " + r[6] + " "
                + r[7] + " " + r[8] + "] + (" + dx + ", " + dy + ", " + dz + ") mm";
    }

    private static Move aroundPoint(double[] rotation, Vector3D at) {
        Vector3D turned = new Move(rotation, 0, 0, 0).apply(at);
        return new Move(rotation, at.getX() - turned.getX(), at.getY() - turned.getY(), at.getZ() - turned.getZ());
    }
}
