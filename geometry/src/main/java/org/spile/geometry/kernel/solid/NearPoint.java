package org.spile.geometry.kernel.solid;

/**
 * The distance of a point to a triangle, region by region (Ericson, Real-Time Collision Detection, 2005, section
 * 5.1.5).
 */
final class NearPoint {
    private NearPoint() {}

    /** Distance in mm of the point to the triangle at a place in a list of nine numbers each. */
    static double distance(double[] triangles, int triangle, double x, double y, double z) {
        int i = 9 * triangle;
        double abx = triangles[i + 3] - triangles[i];
        double aby = triangles[i + 4] - triangles[i + 1];
        double abz = triangles[i + 5] - triangles[i + 2];
        double acx = triangles[i + 6] - triangles[i];
        double acy = triangles[i + 7] - triangles[i + 1];
        double acz = triangles[i + 8] - triangles[i + 2];
        double apx = x - triangles[i];
        double apy = y - triangles[i + 1];
        double apz = z - triangles[i + 2];
        double d1 = abx * apx + aby * apy + abz * apz;
        double d2 = acx * apx + acy * apy + acz * apz;
        double ab2 = abx * abx + aby * aby + abz * abz;
        double ac2 = acx * acx + acy * acy + acz * acz;
        double abac = abx * acx + aby * acy + abz * acz;
        double d3 = d1 - ab2;
        double d4 = d2 - abac;
        double d5 = d1 - abac;
        double d6 = d2 - ac2;
        double vc = d1 * d4 - d3 * d2;
        double vb = d5 * d2 - d1 * d6;
        double va = d3 * d6 - d5 * d4;
        // The nearest point is a + v·ab + w·ac.
        double v;
        double w;
        if (d1 <= 0 && d2 <= 0) {
            v = 0;
            w = 0;
        } else if (d3 >= 0 && d4 <= d3) {
            v = 1;
            w = 0;
        } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            v = d1 / ab2;
            w = 0;
        } else if (d6 >= 0 && d5 <= d6) {
            v = 0;
            w = 1;
        } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            v = 0;
            w = d2 / ac2;
        } else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            w = (d4 - d3) / ((d4 - d3) + (d5 - d6));
            v = 1 - w;
        } else {
            v = vb / (va + vb + vc);
            w = vc / (va + vb + vc);
        }
        double dx = apx - v * abx - w * acx;
        double dy = apy - v * aby - w * acy;
        double dz = apz - v * abz - w * acz;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
