package org.spile.geometry.kernel.clearance;

import java.util.Arrays;
import java.util.List;
import org.spile.geometry.kernel.planar.PlanarGap;
import org.spile.geometry.kernel.solid.ConvexCore;

/**
 * A point that the plans of two upright prisms share, well inside both where that is easy: one object per thread, no
 * allocation once its rings are long enough.
 */
final class SharedPoint {
    private double[] ringX = new double[16];
    private double[] ringY = new double[16];
    private double[] nextX = new double[16];
    private double[] nextY = new double[16];
    private int size;
    private int nextSize;

    /** In mm. */
    double x;

    /** In mm. */
    double y;

    /** The middle of the first two convex parts' common area; failing that, between the witnesses of the gap. */
    void find(List<ConvexCore> a, List<ConvexCore> b, PlanarGap gap) {
        for (int i = 0; i < a.size(); i++) {
            for (int j = 0; j < b.size(); j++) {
                if (clip(a.get(i), b.get(j))) {
                    toMiddle();
                    return;
                }
            }
        }
        x = (gap.onAx() + gap.onBx()) / 2;
        y = (gap.onAy() + gap.onBy()) / 2;
    }

    /** The corners of an upright core's plan: its bottom ring comes first. */
    private static int corners(ConvexCore upright) {
        return upright.count() / 2;
    }

    private boolean clip(ConvexCore a, ConvexCore b) {
        boolean byA = corners(a) > 2;
        if (!byA && corners(b) <= 2) {
            return false;
        }
        start(byA ? b : a);
        ConvexCore by = byA ? a : b;
        int n = corners(by);
        for (int i = 0; i < n; i++) {
            clipBySide(by, i, (i + 1) % n);
        }
        return size > 0;
    }

    private void start(ConvexCore part) {
        size = 0;
        nextSize = 0;
        for (int i = 0; i < corners(part); i++) {
            add(part.x(i), part.y(i));
        }
        take();
    }

    /** Keeps what lies left of a side of a convex ring (Sutherland, Hodgman, Comm. ACM 17, 1974). */
    private void clipBySide(ConvexCore by, int i, int j) {
        double ex = by.x(j) - by.x(i);
        double ey = by.y(j) - by.y(i);
        for (int k = 0; k < size; k++) {
            int next = (k + 1) % size;
            double here = ex * (ringY[k] - by.y(i)) - ey * (ringX[k] - by.x(i));
            double there = ex * (ringY[next] - by.y(i)) - ey * (ringX[next] - by.x(i));
            if (here >= 0) {
                add(ringX[k], ringY[k]);
            }
            if (here >= 0 != there >= 0) {
                double t = here / (here - there);
                add(ringX[k] + t * (ringX[next] - ringX[k]), ringY[k] + t * (ringY[next] - ringY[k]));
            }
        }
        take();
    }

    private void add(double px, double py) {
        if (nextSize == nextX.length) {
            nextX = Arrays.copyOf(nextX, 2 * nextSize);
            nextY = Arrays.copyOf(nextY, 2 * nextSize);
        }
        nextX[nextSize] = px;
        nextY[nextSize] = py;
        nextSize++;
    }

    private void take() {
        double[] swapX = ringX;
        double[] swapY = ringY;
        ringX = nextX;
        ringY = nextY;
        nextX = swapX;
        nextY = swapY;
        size = nextSize;
        nextSize = 0;
    }

    private void toMiddle() {
        x = 0;
        y = 0;
        for (int i = 0; i < size; i++) {
            x += ringX[i] / size;
            y += ringY[i] / size;
        }
    }
}
