package org.spile.geometry.kernel.clearance;

import java.util.Arrays;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The corners of one convex core in plain arrays, taken about a common centre so that no digits are lost far from the
 * origin. A disc is replaced by corners on its rim: a coarse ring, and a fine fan about the direction of interest.
 */
final class Corners {
    private static final int RING = 8;

    /** Fan corners on each side of the direction of interest. */
    private static final int FAN = 12;

    double[] x = new double[64];
    double[] y = new double[64];
    double[] z = new double[64];
    int count;

    private final double[] along = new double[3];
    private final double[] across = new double[3];

    /** Takes the corners as they are, a disc left out. */
    void load(ConvexCore core, double centreX, double centreY, double centreZ) {
        count = core.count();
        ensure(count);
        for (int i = 0; i < count; i++) {
            x[i] = core.x(i) - centreX;
            y[i] = core.y(i) - centreY;
            z[i] = core.z(i) - centreZ;
        }
    }

    /**
     * Takes every corner at every place of the rim. The fan covers an angle on either side of a direction; its corners
     * are nearer together by {@value #FAN}.
     */
    void loadWithRim(
            ConvexCore core, double cx, double cy, double cz, double dx, double dy, double dz, double halfFanRad) {
        load(core, cx, cy, cz);
        aim(core, dx, dy, dz);
        int corners = count;
        int places = RING + 2 * FAN + 1;
        ensure(corners * (places + 1));
        int at = corners;
        for (int k = 0; k < places; k++) {
            double angle = k < RING ? 2 * Math.PI * k / RING + Math.PI / RING : halfFanRad * (k - RING - FAN) / FAN;
            double c = core.discMm() * Math.cos(angle);
            double s = core.discMm() * Math.sin(angle);
            double ox = c * along[0] + s * across[0];
            double oy = c * along[1] + s * across[1];
            double oz = c * along[2] + s * across[2];
            for (int i = 0; i < corners; i++) {
                x[at] = x[i] + ox;
                y[at] = y[i] + oy;
                z[at] = z[i] + oz;
                at++;
            }
        }
        count = at;
    }

    /** Unit vectors square to the axis: towards the direction, and square to that. */
    private void aim(ConvexCore core, double dx, double dy, double dz) {
        double ux = core.axisX();
        double uy = core.axisY();
        double uz = core.axisZ();
        if (!across(ux, uy, uz, dx, dy, dz)) {
            // Looking along the axis: any direction across it will do.
            boolean useX = Math.abs(ux) < 0.7;
            across(ux, uy, uz, useX ? 1 : 0, useX ? 0 : 1, 0);
        }
        across[0] = uy * along[2] - uz * along[1];
        across[1] = uz * along[0] - ux * along[2];
        across[2] = ux * along[1] - uy * along[0];
    }

    private boolean across(double ux, double uy, double uz, double dx, double dy, double dz) {
        double ox = dx;
        double oy = dy;
        double oz = dz;
        // Twice, as one subtraction leaves a part along the axis when the direction is nearly parallel to it.
        for (int pass = 0; pass < 2; pass++) {
            double part = ox * ux + oy * uy + oz * uz;
            ox -= part * ux;
            oy -= part * uy;
            oz -= part * uz;
        }
        double length = Math.sqrt(ox * ox + oy * oy + oz * oz);
        if (length <= 1e-14 * Math.sqrt(dx * dx + dy * dy + dz * dz)) {
            return false;
        }
        along[0] = ox / length;
        along[1] = oy / length;
        along[2] = oz / length;
        return true;
    }

    /** The angle between a direction's part across the axis and the middle of the fan. */
    double fromFan(double dx, double dy, double dz) {
        double c = dx * along[0] + dy * along[1] + dz * along[2];
        double s = dx * across[0] + dy * across[1] + dz * across[2];
        return c == 0 && s == 0 ? 0 : Math.abs(Math.atan2(s, c));
    }

    /** The corner farthest in a direction; of equals the first. */
    int extreme(double dx, double dy, double dz) {
        int best = 0;
        double far = x[0] * dx + y[0] * dy + z[0] * dz;
        for (int i = 1; i < count; i++) {
            double value = x[i] * dx + y[i] * dy + z[i] * dz;
            if (value > far) {
                far = value;
                best = i;
            }
        }
        return best;
    }

    private void ensure(int size) {
        if (size > x.length) {
            x = Arrays.copyOf(x, 2 * size);
            y = Arrays.copyOf(y, 2 * size);
            z = Arrays.copyOf(z, 2 * size);
        }
    }
}
