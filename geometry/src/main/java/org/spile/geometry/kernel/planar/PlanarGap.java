package org.spile.geometry.kernel.planar;

/**
 * Measures the signed distance of two footprints, again and again without allocating: one object per thread.
 *
 * <p>Apart, the distance of polygons is attained between a corner of one and a side of the other, so all such pairs
 * settle it. Two convex cores overlap if and only if no side of either separates them; their depth is the least
 * overlap over those sides' normals, exact because the sides of A ⊕ −B are sides of A and of B (de Berg and others,
 * Computational Geometry, 3rd ed., theorem 13.5). Radii come off at the end, which is exact for convex cores.
 *
 * <p>For a core that is not convex the depth is the least shift that frees it, see {@link PlanarEscape}; there the
 * bounds may differ, and both are reported. Negative values are depths. Lengths in mm.
 */
public final class PlanarGap {
    private final ConvexSearch search = new ConvexSearch();
    private double lowerMm;
    private double upperMm;
    private double onAx;
    private double onAy;
    private double onBx;
    private double onBy;
    private double dirX;
    private double dirY;
    private boolean meet;

    /** Best squared distance found so far, and the side's normal if the foot lies within the side. */
    private double best2;

    private double cornerX;
    private double cornerY;
    private double footX;
    private double footY;
    private double normalX;
    private double normalY;
    private boolean cornerOnB;
    private boolean footWithinSide;

    /** Greatest separation over the sides of both convex cores, and where. */
    private double separation;

    private Rings separatingRings;
    private int separatingSide;
    private int separatedCorner;
    private boolean separatorOnA;

    /** Makes a workspace that has measured nothing yet. */
    public PlanarGap() {}

    /**
     * Measures a pair, depth included.
     *
     * @param a first footprint
     * @param b second footprint
     */
    public void measure(Footprint a, Footprint b) {
        measureCores(a, b);
        double radii = a.radiusMm() + b.radiusMm();
        boolean convex = a.isConvex() && b.isConvex();
        if (meet && !convex) {
            PlanarEscape.from(a, b).report(this, a, b);
        } else {
            lowerMm -= radii;
            upperMm -= radii;
            if (upperMm < 0 && !convex) {
                PlanarEscape.along(a, b, dirX * -upperMm, dirY * -upperMm, -upperMm)
                        .report(this, a, b);
                return;
            }
            growWitnesses(a.radiusMm(), b.radiusMm());
        }
    }

    /** Measures the cores alone: distance if apart, depth if both are convex, else 0 with {@code meet} set. */
    private void measureCores(Footprint a, Footprint b) {
        Rings ringsA = a.core();
        Rings ringsB = b.core();
        meet = false;
        if (a.isConvex() && b.isConvex()) {
            if (search.areApart(ringsA, ringsB)) {
                reportSearched();
                return;
            }
            findSeparation(ringsA, ringsB);
            boolean thin = ringsA.count() <= 2 && ringsB.count() <= 2;
            if (separation < (thin ? -GeometryTolerance.ARITHMETIC_MM : 0)) {
                meet = true;
                reportOverlap(ringsA, ringsB);
                return;
            }
        } else if (meet(ringsA, ringsB)) {
            meet = true;
            lowerMm = 0;
            upperMm = 0;
            return;
        }
        findClosest(ringsA, ringsB);
        reportApart();
    }

    private void reportSearched() {
        lowerMm = search.distance;
        upperMm = search.distance;
        place(search.onAx(), search.onAy(), search.onBx(), search.onBy(), search.directionX(), search.directionY());
    }

    private void findSeparation(Rings a, Rings b) {
        separation = Double.NEGATIVE_INFINITY;
        separateBySidesOf(a, b, true);
        separateBySidesOf(b, a, false);
        if (separation == Double.NEGATIVE_INFINITY) {
            separation = 0;
            separatingRings = null;
        }
    }

    private void separateBySidesOf(Rings a, Rings b, boolean sidesOnA) {
        double[] ax = a.x;
        double[] ay = a.y;
        double[] bx = b.x;
        double[] by = b.y;
        for (int i = 0; ax.length > 1 && i < ax.length; i++) {
            int j = a.next[i];
            double nx = ay[j] - ay[i];
            double ny = ax[i] - ax[j];
            double least = Double.POSITIVE_INFINITY;
            int corner = 0;
            for (int k = 0; k < bx.length; k++) {
                double out = nx * (bx[k] - ax[i]) + ny * (by[k] - ay[i]);
                if (out < least) {
                    least = out;
                    corner = k;
                }
            }
            double found = least / Math.sqrt(nx * nx + ny * ny);
            if (found > separation) {
                separation = found;
                separatingRings = a;
                separatingSide = i;
                separatedCorner = corner;
                separatorOnA = sidesOnA;
            }
        }
    }

    /** The depth with the sides' normal; witnesses on the two boundaries, one depth apart. */
    private void reportOverlap(Rings a, Rings b) {
        lowerMm = separation;
        upperMm = separation;
        Rings other = separatorOnA ? b : a;
        placeOnSeparatingSide(other);
    }

    private void placeOnSeparatingSide(Rings other) {
        Rings r = separatingRings;
        int i = separatingSide;
        int j = r.next[i];
        double ex = r.x[j] - r.x[i];
        double ey = r.y[j] - r.y[i];
        double length2 = ex * ex + ey * ey;
        double length = Math.sqrt(length2);
        double nx = ey / length;
        double ny = -ex / length;
        double t = ((other.x[separatedCorner] - r.x[i]) * ex + (other.y[separatedCorner] - r.y[i]) * ey) / length2;
        t = Math.max(0, Math.min(1, t));
        double sideX = r.x[i] + t * ex;
        double sideY = r.y[i] + t * ey;
        double otherX = sideX + separation * nx;
        double otherY = sideY + separation * ny;
        if (separatorOnA) {
            place(sideX, sideY, otherX, otherY, nx, ny);
        } else {
            place(otherX, otherY, sideX, sideY, -nx, -ny);
        }
    }

    private void findClosest(Rings a, Rings b) {
        best2 = Double.POSITIVE_INFINITY;
        cornersAgainstSides(b, a, true);
        cornersAgainstSides(a, b, false);
    }

    private void cornersAgainstSides(Rings corners, Rings sides, boolean cornersOnB) {
        for (int i = 0; i < sides.x.length; i++) {
            int j = sides.next[i];
            double sx = sides.x[i];
            double sy = sides.y[i];
            double ex = sides.x[j] - sx;
            double ey = sides.y[j] - sy;
            double length2 = ex * ex + ey * ey;
            for (int k = 0; k < corners.x.length; k++) {
                double qx = corners.x[k] - sx;
                double qy = corners.y[k] - sy;
                double cross = qx * ey - qy * ex;
                if (cross * cross >= best2 * length2 && length2 > 0) {
                    continue;
                }
                double along = qx * ex + qy * ey;
                double t = along <= 0 ? 0 : along >= length2 ? 1 : along / length2;
                double dx = qx - t * ex;
                double dy = qy - t * ey;
                double d2 = dx * dx + dy * dy;
                if (d2 < best2) {
                    best2 = d2;
                    cornerX = corners.x[k];
                    cornerY = corners.y[k];
                    footX = sx + t * ex;
                    footY = sy + t * ey;
                    cornerOnB = cornersOnB;
                    footWithinSide = t > 0 && t < 1;
                    normalX = ey;
                    normalY = -ex;
                }
            }
        }
    }

    private void reportApart() {
        double distance = Math.sqrt(best2);
        double nx = cornerX - footX;
        double ny = cornerY - footY;
        if (distance <= GeometryTolerance.ARITHMETIC_MM || footWithinSide) {
            double side = nx * normalX + ny * normalY;
            boolean outer = side >= 0 || distance <= GeometryTolerance.ARITHMETIC_MM;
            nx = outer ? normalX : -normalX;
            ny = outer ? normalY : -normalY;
        }
        double length = Math.hypot(nx, ny);
        if (length == 0) {
            nx = 1;
            length = 1;
        }
        lowerMm = distance;
        upperMm = distance;
        if (cornerOnB) {
            place(footX, footY, cornerX, cornerY, nx / length, ny / length);
        } else {
            place(cornerX, cornerY, footX, footY, -nx / length, -ny / length);
        }
    }

    private static boolean meet(Rings a, Rings b) {
        if (a.minX() > b.maxX() || b.minX() > a.maxX() || a.minY() > b.maxY() || b.minY() > a.maxY()) {
            return false;
        }
        return sidesCross(a, b) || within(a, b) || within(b, a);
    }

    /** Whether a filled ring set holds the first corner of the other; called when no sides cross. */
    private static boolean within(Rings inner, Rings outer) {
        if (outer.count() <= 2) {
            return false;
        }
        for (int i = 0; i < inner.count(); i++) {
            if (insideStrictly(outer, inner.x[i], inner.y[i])) {
                return true;
            }
        }
        return inner.count() == 2
                && insideStrictly(outer, (inner.x[0] + inner.x[1]) / 2, (inner.y[0] + inner.y[1]) / 2);
    }

    private static boolean insideStrictly(Rings rings, double px, double py) {
        for (int i = 0; i < rings.count(); i++) {
            if (rings.squaredToSide(i, px, py) <= GeometryTolerance.ARITHMETIC_MM * GeometryTolerance.ARITHMETIC_MM) {
                return false;
            }
        }
        return rings.contains(px, py);
    }

    private static boolean sidesCross(Rings a, Rings b) {
        for (int i = 0; i < a.count(); i++) {
            double ax = a.x[i];
            double ay = a.y[i];
            double ex = a.x[a.next[i]] - ax;
            double ey = a.y[a.next[i]] - ay;
            for (int k = 0; k < b.count(); k++) {
                int l = b.next[k];
                double first = ex * (b.y[k] - ay) - ey * (b.x[k] - ax);
                double second = ex * (b.y[l] - ay) - ey * (b.x[l] - ax);
                if (first > 0 == second > 0 || first == 0 || second == 0) {
                    continue;
                }
                double fx = b.x[l] - b.x[k];
                double fy = b.y[l] - b.y[k];
                double third = fx * (ay - b.y[k]) - fy * (ax - b.x[k]);
                double fourth = fx * (ay + ey - b.y[k]) - fy * (ax + ex - b.x[k]);
                if (third > 0 != fourth > 0 && third != 0 && fourth != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private void place(double ax, double ay, double bx, double by, double nx, double ny) {
        onAx = ax;
        onAy = ay;
        onBx = bx;
        onBy = by;
        dirX = nx;
        dirY = ny;
    }

    private void growWitnesses(double radiusA, double radiusB) {
        onAx += dirX * radiusA;
        onAy += dirY * radiusA;
        onBx -= dirX * radiusB;
        onBy -= dirY * radiusB;
    }

    void report(double lower, double upper, double ax, double ay, double bx, double by, double nx, double ny) {
        lowerMm = lower;
        upperMm = upper;
        place(ax, ay, bx, by, nx, ny);
    }

    /**
     * The upper bound of the signed distance; equal to the lower one unless a core with a radius that is not convex is
     * penetrated.
     *
     * @return mm, negative for a depth
     */
    public double distanceMm() {
        return upperMm;
    }

    /**
     * The lower bound of the signed distance.
     *
     * @return mm, negative for a depth
     */
    public double lowerMm() {
        return lowerMm;
    }

    /** The witness on the first footprint: its x in mm. */
    public double onAx() {
        return onAx;
    }

    /** The witness on the first footprint: its y in mm. */
    public double onAy() {
        return onAy;
    }

    /** The witness on the second footprint: its x in mm. */
    public double onBx() {
        return onBx;
    }

    /** The witness on the second footprint: its y in mm. */
    public double onBy() {
        return onBy;
    }

    /**
     * The unit direction from the first to the second, along which the second gets away.
     *
     * @return x component
     */
    public double directionX() {
        return dirX;
    }

    /**
     * The unit direction from the first to the second, along which the second gets away.
     *
     * @return y component
     */
    public double directionY() {
        return dirY;
    }
}
