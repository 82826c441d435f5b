package org.spile.geometry.kernel.solid;

/**
 * How often triangles wind round a point: the sum of the solid angles that they fill, over 4π.
 *
 * <p>Solid angle after van Oosterom and Strackee (IEEE Trans. Biomedical Engineering 30, 1983, equation 8). Round a
 * closed surface the sum is a whole number, so that rounding can't spoil it; only at the surface itself it jumps.
 */
final class WindingNumber {
    private WindingNumber() {}

    static double of(double[] triangles, int triangle, double x, double y, double z) {
        int i = 9 * triangle;
        double ax = triangles[i] - x;
        double ay = triangles[i + 1] - y;
        double az = triangles[i + 2] - z;
        double bx = triangles[i + 3] - x;
        double by = triangles[i + 4] - y;
        double bz = triangles[i + 5] - z;
        double cx = triangles[i + 6] - x;
        double cy = triangles[i + 7] - y;
        double cz = triangles[i + 8] - z;
        double a = Math.sqrt(ax * ax + ay * ay + az * az);
        double b = Math.sqrt(bx * bx + by * by + bz * bz);
        double c = Math.sqrt(cx * cx + cy * cy + cz * cz);
        double volume = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        double ab = ax * bx + ay * by + az * bz;
        double bc = bx * cx + by * cy + bz * cz;
        double ca = cx * ax + cy * ay + cz * az;
        double below = a * b * c + ab * c + bc * a + ca * b;
        return StrictMath.atan2(volume, below) / (2 * Math.PI);
    }
}
