package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.PlanarGap;

/**
 * A point that two overlapping plan shapes share, well inside both where that is easy.
 *
 * @param x in mm
 * @param y in mm
 */
record SharedPoint(double x, double y) {

    /** The middle of the first two convex parts' common area; failing that, between the witnesses of the gap. */
    static SharedPoint of(Footprint a, Footprint b, PlanarGap gap) {
        for (Footprint partA : a.convexParts()) {
            for (Footprint partB : b.convexParts()) {
                List<SharedPoint> common = partA.cornerCount() > 2
                        ? clipped(corners(partB), partA)
                        : partB.cornerCount() > 2 ? clipped(corners(partA), partB) : List.of();
                if (!common.isEmpty()) {
                    return middle(common);
                }
            }
        }
        return new SharedPoint((gap.onAx() + gap.onBx()) / 2, (gap.onAy() + gap.onBy()) / 2);
    }

    private static List<SharedPoint> corners(Footprint part) {
        List<SharedPoint> corners = new ArrayList<>();
        for (int i = 0; i < part.cornerCount(); i++) {
            corners.add(new SharedPoint(part.x(i), part.y(i)));
        }
        return corners;
    }

    /** Clips a ring by each side of a convex ring in turn (Sutherland, Hodgman 1974). */
    private static List<SharedPoint> clipped(List<SharedPoint> ring, Footprint by) {
        List<SharedPoint> left = ring;
        int n = by.cornerCount();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            double ex = by.x(j) - by.x(i);
            double ey = by.y(j) - by.y(i);
            List<SharedPoint> next = new ArrayList<>();
            for (int k = 0; k < left.size(); k++) {
                SharedPoint p = left.get(k);
                SharedPoint q = left.get((k + 1) % left.size());
                double inP = ex * (p.y - by.y(i)) - ey * (p.x - by.x(i));
                double inQ = ex * (q.y - by.y(i)) - ey * (q.x - by.x(i));
                if (inP >= 0) {
                    next.add(p);
                }
                if (inP >= 0 != inQ >= 0) {
                    double t = inP / (inP - inQ);
                    next.add(new SharedPoint(p.x + t * (q.x - p.x), p.y + t * (q.y - p.y)));
                }
            }
            left = next;
        }
        return left;
    }

    private static SharedPoint middle(List<SharedPoint> points) {
        double x = 0;
        double y = 0;
        for (SharedPoint point : points) {
            x += point.x / points.size();
            y += point.y / points.size();
        }
        return new SharedPoint(x, y);
    }
}
