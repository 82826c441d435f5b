package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.ConvexCore;

/** The point of a core's disc, about the disc's middle, that lies farthest in a direction. */
final class RimPoint {
    /** Below this part of its length a direction across the axis is cleaned of what is left along the axis. */
    private static final double SMALL = 1e-3;

    /** Below this part the direction runs along the axis, and any point of the disc will do: its middle is taken. */
    private static final double NONE = 1e-15;

    double x;
    double y;
    double z;

    void find(ConvexCore core, double dx, double dy, double dz) {
        x = 0;
        y = 0;
        z = 0;
        if (core.discMm() > 0) {
            findOnRim(core, dx, dy, dz);
        }
    }

    private void findOnRim(ConvexCore core, double dx, double dy, double dz) {
        double ux = core.axisX();
        double uy = core.axisY();
        double uz = core.axisZ();
        double along = dx * ux + dy * uy + dz * uz;
        double ox = dx - along * ux;
        double oy = dy - along * uy;
        double oz = dz - along * uz;
        double across2 = ox * ox + oy * oy + oz * oz;
        if (across2 <= SMALL * SMALL * along * along) {
            double rest = ox * ux + oy * uy + oz * uz;
            ox -= rest * ux;
            oy -= rest * uy;
            oz -= rest * uz;
            across2 = ox * ox + oy * oy + oz * oz;
        }
        double scale = across2 > NONE * NONE * along * along ? core.discMm() / Math.sqrt(across2) : 0;
        x = ox * scale;
        y = oy * scale;
        z = oz * scale;
    }
}
