package org.spile.exporters.drawing.layout;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Span;

/**
 * The directions in which a dimension is laid out.
 *
 * <pre>
 *        out ^        up is where the tops of letters point; out leads away from what is measured:
 *            |        either up or the opposite
 *   ---------+--------&gt; along
 * </pre>
 *
 * @param along reading direction, unit vector
 * @param out away from the measured points, unit vector
 * @param low where the nearer measured point lies along
 * @param high where the farther measured point lies along
 * @param lowPoint the nearer measured point
 * @param highPoint the farther measured point
 * @param base where the outline ends, outwards
 */
record DimensionFrame(
        Vector2D along, Vector2D out, double low, double high, Vector2D lowPoint, Vector2D highPoint, double base) {

    static DimensionFrame of(Dimension dimension, Extent outline) {
        return of(dimension.span(), dimension.side(), dimension.close(), outline);
    }

    static DimensionFrame of(Span span, Side side, boolean close, Extent outline) {
        var angle = Math.toRadians(Span.readable(span.angleDeg()));
        var along = unit(StrictMath.cos(angle), StrictMath.sin(angle));
        var up = Vector2D.of(-along.getY(), along.getX());
        var out = up.dot(side.outward()) >= -1e-9 ? up : up.negate();
        var from = along.dot(span.from());
        var to = along.dot(span.to());
        var swap = from > to;
        var outmost = Math.max(out.dot(span.from()), out.dot(span.to()));
        if (!close) {
            for (var corner : outline.corners()) {
                outmost = Math.max(outmost, out.dot(corner));
            }
        }
        return new DimensionFrame(
                along,
                out,
                Math.min(from, to),
                Math.max(from, to),
                swap ? span.to() : span.from(),
                swap ? span.from() : span.to(),
                outmost);
    }

    /** Level and upright directions exactly so: no 6e-17 left over from a cosine. */
    private static Vector2D unit(double cos, double sin) {
        return Vector2D.of(Math.abs(cos) < 1e-12 ? 0 : cos, Math.abs(sin) < 1e-12 ? 0 : sin);
    }

    Vector2D up() {
        return Vector2D.of(-along.getY(), along.getX());
    }

    Vector2D at(double alongwards, double outwards) {
        return along.multiply(alongwards).add(out.multiply(outwards));
    }

    double length() {
        return high - low;
    }

    /** Reading direction, degrees. */
    double angleDeg() {
        return Math.toDegrees(StrictMath.atan2(along.getY(), along.getX()));
    }
}
