package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * The directions that decide whether two convex cores overlap: the face normals of both, and the cross products of an
 * edge of each (Gottschalk, Lin, Manocha, SIGGRAPH 1996, section 5). Opposite directions come as one.
 *
 * <p>Complete for cores without discs. A disc adds its reach to every range and one more family, from its axis to the
 * other's corners, which is not complete but close.
 */
final class DecidingAxes {
    private static final double PARALLEL = 1e-10;

    private ConvexCore a;
    private ConvexCore b;
    /** From B's centre to that of the shifted A. */
    private double offX;

    private double offY;
    private double offZ;
    private AxisVisitor visitor;

    void visit(ConvexCore first, double dx, double dy, double dz, ConvexCore second, AxisVisitor to) {
        a = first;
        b = second;
        offX = first.centreX() - second.centreX() + dx;
        offY = first.centreY() - second.centreY() + dy;
        offZ = first.centreZ() - second.centreZ() + dz;
        visitor = to;
        for (int i = 0; i < a.normalCount(); i++) {
            send(a.normal(i, 0), a.normal(i, 1), a.normal(i, 2));
        }
        for (int i = 0; i < b.normalCount(); i++) {
            send(b.normal(i, 0), b.normal(i, 1), b.normal(i, 2));
        }
        for (int i = 0; i < a.edgeCount(); i++) {
            for (int j = 0; j < b.edgeCount(); j++) {
                sendCross(a.edge(i, 0), a.edge(i, 1), a.edge(i, 2), b.edge(j, 0), b.edge(j, 1), b.edge(j, 2));
            }
        }
        if (a.discMm() > 0) {
            sendFromAxis(a);
        }
        if (b.discMm() > 0) {
            sendFromAxis(b);
        }
    }

    /** A disc's rim touches a corner of the other core along the line from axis to corner. */
    private void sendFromAxis(ConvexCore disc) {
        double ux = disc.axisX();
        double uy = disc.axisY();
        double uz = disc.axisZ();
        for (int i = 0; i < a.count(); i++) {
            for (int j = 0; j < b.count(); j++) {
                double dx = b.localX(j) - a.localX(i) - offX;
                double dy = b.localY(j) - a.localY(i) - offY;
                double dz = b.localZ(j) - a.localZ(i) - offZ;
                double along = dx * ux + dy * uy + dz * uz;
                dx -= along * ux;
                dy -= along * uy;
                dz -= along * uz;
                double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
                if (length > PARALLEL) {
                    send(dx / length, dy / length, dz / length);
                }
            }
        }
    }

    private void sendCross(double ax, double ay, double az, double bx, double by, double bz) {
        double x = ay * bz - az * by;
        double y = az * bx - ax * bz;
        double z = ax * by - ay * bx;
        double length2 = x * x + y * y + z * z;
        if (length2 > PARALLEL * PARALLEL) {
            double scale = 1 / Math.sqrt(length2);
            send(x * scale, y * scale, z * scale);
        }
    }

    private void send(double x, double y, double z) {
        double highA = a.localReach(x, y, z);
        double lowA = a.isCentral() ? -highA : -a.localReach(-x, -y, -z);
        double highB = b.localReach(x, y, z);
        double lowB = b.isCentral() ? -highB : -b.localReach(-x, -y, -z);
        double off = offX * x + offY * y + offZ * z;
        double discs = a.discReach(x, y, z) + b.discReach(x, y, z);
        visitor.axis(x, y, z, lowB - highA - off - discs, lowA + off - highB - discs);
    }
}
