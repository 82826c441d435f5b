package org.spile.geometry.kernel.solid;

import java.math.BigDecimal;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * On which side of a plane a point lies, decided without rounding.
 *
 * <p>A determinant in doubles settles all but the closest cases, by the error bound of Shewchuk, Adaptive Precision
 * Floating-Point Arithmetic and Fast Robust Geometric Predicates (1997), bound A of ORIENT3D; most of the rest with twice
 * the digits (Dekker 1971), and what is then still open in exact decimals.
 */
final class Orientation {
    /** (7 + 56 ε) ε with ε = 2⁻⁵³, the factor of the bound. */
    private static final double BOUND = (7 + 56 * 0x1p-53) * 0x1p-53;

    /** A generous multiple of 2⁻¹⁰⁴, the relative error of one step with twice the digits. */
    private static final double TWICE_BOUND = 0x1p-97;

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
        if (permanent == 0 || flat(ax, bx, cx) || flat(ay, by, cy) || flat(az, bz, cz)) {
            return 0;
        }
        double[] twice = determinant(differences(a, d), differences(b, d), differences(c, d));
        if (Math.abs(twice[0]) > TWICE_BOUND * permanent) {
            return twice[0] < 0 ? 1 : -1;
        }
        return -exact(a, b, c, d);
    }

    /** All four points share a coordinate; a difference is 0 only if its terms are equal. */
    private static boolean flat(double p, double q, double r) {
        return p == 0 && q == 0 && r == 0;
    }

    // ---- twice the digits: a value is an unevaluated sum of two doubles -----------------------------------------

    private static double[][] differences(Vector3D a, Vector3D b) {
        return new double[][] {sum(a.getX(), -b.getX()), sum(a.getY(), -b.getY()), sum(a.getZ(), -b.getZ())};
    }

    private static double[] determinant(double[][] p, double[][] q, double[][] r) {
        return plus(plus(times(p[2], minor(q, r)), times(q[2], minor(r, p))), times(r[2], minor(p, q)));
    }

    private static double[] minor(double[][] a, double[][] b) {
        double[] second = times(b[0], a[1]);
        return plus(times(a[0], b[1]), new double[] {-second[0], -second[1]});
    }

    /** Exact sum (Knuth's two-sum). */
    private static double[] sum(double a, double b) {
        double high = a + b;
        double part = high - a;
        return new double[] {high, (a - (high - part)) + (b - part)};
    }

    private static double[] plus(double[] a, double[] b) {
        double[] high = sum(a[0], b[0]);
        double[] low = sum(a[1], b[1]);
        double[] first = sum(high[0], high[1] + low[0]);
        return sum(first[0], first[1] + low[1]);
    }

    private static double[] times(double[] a, double[] b) {
        double high = a[0] * b[0];
        double low = Math.fma(a[0], b[0], -high) + (a[0] * b[1] + a[1] * b[0]);
        return sum(high, low);
    }

    // ---- all the digits -----------------------------------------------------------------------------------------

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
