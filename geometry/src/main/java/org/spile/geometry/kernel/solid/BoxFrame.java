package org.spile.geometry.kernel.solid;

/**
 * The three half edges of a parallelepiped, about its middle: its farthest corner in a direction follows from three signs.
 */
final class BoxFrame {
    private final double ux;
    private final double uy;
    private final double uz;
    private final double vx;
    private final double vy;
    private final double vz;
    private final double wx;
    private final double wy;
    private final double wz;
    /** Which corner lies ahead along u (bit 0), v (bit 1), w (bit 2). */
    private final int[] cornerOf;

    private BoxFrame(double[] u, double[] v, double[] w, int[] cornerOf) {
        this.ux = u[0];
        this.uy = u[1];
        this.uz = u[2];
        this.vx = v[0];
        this.vy = v[1];
        this.vz = v[2];
        this.wx = w[0];
        this.wy = w[1];
        this.wz = w[2];
        this.cornerOf = cornerOf;
    }

    /** The frame of eight corners about their middle with three edge directions; null if they are no parallelepiped. */
    static BoxFrame of(double[] x, double[] y, double[] z, double[] edges) {
        double[][] half = new double[3][];
        double[][] duals = new double[3][];
        for (int k = 0; k < 3; k++) {
            int l = 3 * ((k + 1) % 3);
            int m = 3 * ((k + 2) % 3);
            double dualX = edges[l + 1] * edges[m + 2] - edges[l + 2] * edges[m + 1];
            double dualY = edges[l + 2] * edges[m] - edges[l] * edges[m + 2];
            double dualZ = edges[l] * edges[m + 1] - edges[l + 1] * edges[m];
            double scale = 1 / (dualX * edges[3 * k] + dualY * edges[3 * k + 1] + dualZ * edges[3 * k + 2]);
            duals[k] = new double[] {dualX * scale, dualY * scale, dualZ * scale};
            double along = Math.abs(x[0] * duals[k][0] + y[0] * duals[k][1] + z[0] * duals[k][2]);
            half[k] = new double[] {along * edges[3 * k], along * edges[3 * k + 1], along * edges[3 * k + 2]};
        }
        int[] cornerOf = {-1, -1, -1, -1, -1, -1, -1, -1};
        for (int i = 0; i < 8; i++) {
            int code = 0;
            double offX = x[i];
            double offY = y[i];
            double offZ = z[i];
            for (int k = 0; k < 3; k++) {
                boolean ahead = x[i] * duals[k][0] + y[i] * duals[k][1] + z[i] * duals[k][2] > 0;
                double sign = ahead ? 1 : -1;
                code |= ahead ? 1 << k : 0;
                offX -= sign * half[k][0];
                offY -= sign * half[k][1];
                offZ -= sign * half[k][2];
            }
            if (cornerOf[code] >= 0 || Math.abs(offX) + Math.abs(offY) + Math.abs(offZ) > 1e-10) {
                return null;
            }
            cornerOf[code] = i;
        }
        return new BoxFrame(half[0], half[1], half[2], cornerOf);
    }

    BoxFrame turned(Move move) {
        return new BoxFrame(turned(move, ux, uy, uz), turned(move, vx, vy, vz), turned(move, wx, wy, wz), cornerOf);
    }

    private static double[] turned(Move move, double x, double y, double z) {
        return new double[] {move.turnedX(x, y, z), move.turnedY(x, y, z), move.turnedZ(x, y, z)};
    }

    int extreme(double dx, double dy, double dz) {
        int code = ux * dx + uy * dy + uz * dz > 0 ? 1 : 0;
        code += vx * dx + vy * dy + vz * dz > 0 ? 2 : 0;
        code += wx * dx + wy * dy + wz * dz > 0 ? 4 : 0;
        return cornerOf[code];
    }

    double reach(double dx, double dy, double dz) {
        return Math.abs(ux * dx + uy * dy + uz * dz)
                + Math.abs(vx * dx + vy * dy + vz * dz)
                + Math.abs(wx * dx + wy * dy + wz * dz);
    }
}
