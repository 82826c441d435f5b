package org.spile.geometry.kernel.solid;

import java.math.BigDecimal;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * On which side of a plane a point lies, decided without rounding.
 *
 * <p>A determinant in doubles settles all but the closest cases, by the error bound of Shewchuk, Adaptive Precision
 * Floating-Point Arithmetic and Fast Robust Geometric Predicates (1997), bound A of ORIENT3D; the rest is computed in
 * exact decimals.
 */
final class Orientation {
    /** (7 + 56 ε) ε with ε = 2⁻⁵³, the factor of the bound. */
    private static final double BOUND = (7 + 56 * 0x1p-53) * 0x1p-53;

    private Orientation() {}

    /** Positive if d lies on the side from which abc runs counter-clockwise, negative below, 0 on the plane. */
    static int of(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        double ax = a.getX() - d.getX();
        double ay = a.getY() - d.getY();
        double az = a.getZ() - d.getZ();
        double bx = b.getX() - d.getX();
        double by = b.getY() - d.getY();
        double bz = b.getZ() - d.getZ();
        double cx = c.getX() - d.getX();
        double cy = c.getY() - d.getY();
        double cz = c.getZ() - d.getZ();
        double determinant = az * (bx * cy - cx * by) + bz * (cx * ay - ax * cy) + cz * (ax * by - bx * ay);
        double permanent = Math.abs(az) * (Math.abs(bx * cy) + Math.abs(cx * by))
                + Math.abs(bz) * (Math.abs(cx * ay) + Math.abs(ax * cy))
                + Math.abs(cz) * (Math.abs(ax * by) + Math.abs(bx * ay));
        if (Math.abs(determinant) > BOUND * permanent) {
            return determinant < 0 ? 1 : -1;
        }
        return -exact(a, b, c, d);
    }

    private static int exact(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        BigDecimal[] p = minus(a, d);
        BigDecimal[] q = minus(b, d);
        BigDecimal[] r = minus(c, d);
        return p[2].multiply(minor(q, r))
                .add(q[2].multiply(minor(r, p)))
                .add(r[2].multiply(minor(p, q)))
                .signum();
    }

    private static BigDecimal minor(BigDecimal[] a, BigDecimal[] b) {
        return a[0].multiply(b[1]).subtract(b[0].multiply(a[1]));
    }

    private static BigDecimal[] minus(Vector3D a, Vector3D b) {
        return new BigDecimal[] {
            new BigDecimal(a.getX()).subtract(new BigDecimal(b.getX())),
            new BigDecimal(a.getY()).subtract(new BigDecimal(b.getY())),
            new BigDecimal(a.getZ()).subtract(new BigDecimal(b.getZ()))
        };
    }
}
