package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Growth of plan shapes as a union of pieces: the core, a strip along each side, a filling at each outward corner.
 *
 * <pre>
 *      strip         filling: round (circumscribed arc) or square (mitre)
 *   +----------+ - .
 *   |          |    \
 *   +==========o-----+      o corner of the core
 *     core     |     |  strip of the next side
 * </pre>
 *
 * <p>Straight sides stay exact on the 1 µm grid; an arc is replaced by tangents, so the result covers the true growth
 * and stands out from it by no more than the sagitta.
 */
final class Growth {
    /** Sharper corners than this would make a mitre longer than eleven times the growth. */
    static final double SHARPEST_MITRE_RAD = Math.toRadians(10);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final double radiusMm;
    private final double sagittaMm;
    private final boolean square;
    private final List<Geometry> pieces = new ArrayList<>();

    private Growth(double radiusMm, double sagittaMm, boolean square) {
        this.radiusMm = radiusMm;
        this.sagittaMm = sagittaMm;
        this.square = square;
    }

    static List<Outline> circumscribed(Footprint footprint, double sagittaMm) {
        if (!(sagittaMm > 0)) {
            throw new IllegalArgumentException("a sagitta of " + sagittaMm + " mm is not more than 0");
        }
        Growth growth = new Growth(footprint.radiusMm(), sagittaMm, false);
        footprint.outline().ifPresent(core -> growth.pieces.add(JtsShapes.polygon(core)));
        growth.addRings(footprint.core());
        return growth.union();
    }

    static List<Outline> round(List<Outline> outlines, double growthMm, double sagittaMm) {
        return grown(outlines, new Growth(growthMm, sagittaMm, false));
    }

    static List<Outline> square(List<Outline> outlines, double growthMm) {
        return grown(outlines, new Growth(growthMm, 1, true));
    }

    private static List<Outline> grown(List<Outline> outlines, Growth growth) {
        for (Outline outline : outlines) {
            growth.pieces.add(JtsShapes.polygon(outline));
            if (growth.radiusMm > 0) {
                growth.addRings(outline.rings());
            }
        }
        return growth.union();
    }

    /** The band within the radius of the boundary, on both sides of it. */
    static List<Outline> band(Outline outline, double radiusMm, double sagittaMm) {
        Growth growth = new Growth(radiusMm, sagittaMm, false);
        Rings rings = outline.rings();
        growth.addRings(rings);
        for (int i = 0; i < rings.count(); i++) {
            growth.addStrip(rings, rings.next[i], i);
            growth.addArc(rings.x[i], rings.y[i], 0, 2 * Math.PI);
        }
        return growth.union();
    }

    private List<Outline> union() {
        return JtsShapes.outlines(UnaryUnionNG.union(pieces, FACTORY, JtsShapes.GRID));
    }

    private void addRings(Rings rings) {
        if (rings.count() == 1) {
            addArc(rings.x[0], rings.y[0], 0, 2 * Math.PI);
            return;
        }
        for (int i = 0; i < rings.count(); i++) {
            int j = rings.next[i];
            addStrip(rings, i, j);
            addCorner(rings, i, j, rings.next[j]);
        }
    }

    /** The strip on the right of the side from i to j, which is the outer side of every ring. */
    private void addStrip(Rings rings, int i, int j) {
        double ex = rings.x[j] - rings.x[i];
        double ey = rings.y[j] - rings.y[i];
        double scale = radiusMm / Math.hypot(ex, ey);
        double ox = ey * scale;
        double oy = -ex * scale;
        add(
                new double[] {rings.x[i], rings.x[i] + ox, rings.x[j] + ox, rings.x[j]},
                new double[] {rings.y[i], rings.y[i] + oy, rings.y[j] + oy, rings.y[j]});
    }

    private void addCorner(Rings rings, int i, int j, int k) {
        double inX = rings.x[j] - rings.x[i];
        double inY = rings.y[j] - rings.y[i];
        double outX = rings.x[k] - rings.x[j];
        double outY = rings.y[k] - rings.y[j];
        double turn = StrictMath.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
        boolean inward = turn < 0 && turn > -Math.PI + 1e-9;
        if (inward || Math.abs(turn) < 1e-12) {
            return;
        }
        double start = StrictMath.atan2(-inX, inY);
        if (square) {
            addMitre(rings.x[j], rings.y[j], start, turn);
        } else {
            addArc(rings.x[j], rings.y[j], start, Math.abs(turn));
        }
    }

    /** Refuses square-corner growth of an outward corner that is too sharp. */
    static void refuseSpike(Vector2D corner, double angleRad) {
        if (angleRad < SHARPEST_MITRE_RAD) {
            throw new IllegalArgumentException("the corner at (" + corner.getX() + ", " + corner.getY()
                    + ") mm is sharper than " + Math.toDegrees(SHARPEST_MITRE_RAD)
                    + "°; square-corner growth would run out in a spike there");
        }
    }

    private void addMitre(double x, double y, double start, double turn) {
        refuseSpike(Vector2D.of(x, y), Math.PI - turn);
        double reach = radiusMm / StrictMath.cos(turn / 2);
        double[] angles = {start, start + turn / 2, start + turn};
        double[] reaches = {radiusMm, reach, radiusMm};
        addFan(x, y, angles, reaches);
    }

    /** A sector whose arc is replaced by tangents, the first and the last touching at the sector's two sides. */
    private void addArc(double x, double y, double start, double turn) {
        // A tangent polygon with half step a stands out by r (1 / cos a - 1), about r a² / 2.
        double halfStep = Math.min(Math.PI / 8, Math.sqrt(2 * sagittaMm / radiusMm) * 0.99);
        int steps = (int) Math.ceil(turn / (2 * halfStep));
        boolean whole = turn > 6.28;
        steps = whole ? (steps + 3) / 4 * 4 : steps;
        double step = turn / steps;
        double reach = radiusMm / StrictMath.cos(step / 2);
        int count = whole ? steps : steps + 2;
        double[] angles = new double[count];
        double[] reaches = new double[count];
        for (int i = 0; i < count; i++) {
            angles[i] = whole ? step * (i + 0.5) : start + Math.max(0, Math.min(turn, step * (i - 0.5)));
            boolean end = i == 0 || i == count - 1;
            reaches[i] = whole || !end ? reach : radiusMm;
        }
        addFan(x, y, angles, reaches);
    }

    private void addFan(double x, double y, double[] angles, double[] reaches) {
        boolean whole = angles[angles.length - 1] - angles[0] > Math.PI + 0.1;
        int extra = whole ? 0 : 1;
        double[] xs = new double[angles.length + extra];
        double[] ys = new double[angles.length + extra];
        xs[0] = x;
        ys[0] = y;
        for (int i = 0; i < angles.length; i++) {
            xs[i + extra] = x + reaches[i] * StrictMath.cos(angles[i]);
            ys[i + extra] = y + reaches[i] * StrictMath.sin(angles[i]);
        }
        add(xs, ys);
    }

    private void add(double[] xs, double[] ys) {
        Coordinate[] ring = new Coordinate[xs.length + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(xs[i % xs.length], ys[i % ys.length]);
        }
        pieces.add(FACTORY.createPolygon(ring));
    }
}
