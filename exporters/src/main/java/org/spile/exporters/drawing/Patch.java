package org.spile.exporters.drawing;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A convex piece of drawing: a point, a line, an arrowhead or a text's box, whichever way it is turned.
 *
 * @param corners in order round it; one is a point, two a line
 */
public record Patch(List<Vector2D> corners) {
    /** Copies the corners. */
    public Patch {
        corners = List.copyOf(corners);
        if (corners.isEmpty()) {
            throw new IllegalArgumentException("a patch needs a corner");
        }
    }

    /** A patch of the given corners. */
    public static Patch of(Vector2D... corners) {
        return new Patch(List.of(corners));
    }

    /** The least upright rectangle round it. */
    public Extent extent() {
        return Extent.around(corners);
    }

    /** Its corners' mean, inside it. */
    public Vector2D middle() {
        return corners.stream().reduce(Vector2D.ZERO, Vector2D::add).multiply(1.0 / corners.size());
    }

    /**
     * Whether it comes nearer to another patch than a distance, or overlaps it.
     *
     * <p>By separating axes: two convex pieces are apart if some edge's normal (or the line between two points) parts
     * them. Across corners the distance is measured along edge normals, which is never more than the true one, so the
     * answer errs on the safe side: it may say near, never wrongly far.
     *
     * @param other the other patch
     * @param distanceMm demanded distance, in the corners' unit; negative lets them overlap by that much
     */
    public boolean nearer(Patch other, double distanceMm) {
        return extent().nearer(other.extent(), distanceMm)
                && !parts(this, this, other, distanceMm)
                && !parts(other, this, other, distanceMm);
    }

    private static boolean parts(Patch axes, Patch a, Patch b, double distanceMm) {
        var n = axes.corners.size();
        for (var i = 0; i < n; i++) {
            var edge = axes.corners.get((i + 1) % n).subtract(axes.corners.get(i));
            var length = edge.norm();
            if (length == 0) {
                continue;
            }
            var normal = Vector2D.of(-edge.getY() / length, edge.getX() / length);
            if (gap(normal, a, b) >= distanceMm) {
                return true;
            }
        }
        return false;
    }

    private static double gap(Vector2D normal, Patch a, Patch b) {
        var minA = Double.POSITIVE_INFINITY;
        var maxA = Double.NEGATIVE_INFINITY;
        for (var corner : a.corners) {
            var along = normal.dot(corner);
            minA = Math.min(minA, along);
            maxA = Math.max(maxA, along);
        }
        var minB = Double.POSITIVE_INFINITY;
        var maxB = Double.NEGATIVE_INFINITY;
        for (var corner : b.corners) {
            var along = normal.dot(corner);
            minB = Math.min(minB, along);
            maxB = Math.max(maxB, along);
        }
        return Math.max(minA - maxB, minB - maxA);
    }

    /**
     * The part of a line that lies inside, as shares of its length.
     *
     * @param from the line's start
     * @param to the line's end
     * @return first and last share inside, 0 to 1; empty if the line passes by. The patch must have an area.
     */
    public Optional<Inside> inside(Vector2D from, Vector2D to) {
        var first = 0.0;
        var last = 1.0;
        var middle = middle();
        for (var i = 0; i < corners.size(); i++) {
            var corner = corners.get(i);
            var edge = corners.get((i + 1) % corners.size()).subtract(corner);
            var normal = Vector2D.of(-edge.getY(), edge.getX());
            var inwards = normal.dot(middle.subtract(corner)) >= 0 ? normal : normal.negate();
            var start = inwards.dot(from.subtract(corner));
            var end = inwards.dot(to.subtract(corner));
            if (start < 0 && end < 0) {
                return Optional.empty();
            }
            if (start < 0) {
                first = Math.max(first, start / (start - end));
            } else if (end < 0) {
                last = Math.min(last, start / (start - end));
            }
        }
        return first < last ? Optional.of(new Inside(first, last)) : Optional.empty();
    }

    /**
     * A turned rectangle with its sides moved outwards.
     *
     * @param by how far, in the corners' unit
     * @return itself if it is no rectangle with an area
     */
    public Patch boxGrown(double by) {
        if (corners.size() != 4) {
            return this;
        }
        var along = corners.get(1).subtract(corners.get(0));
        var up = corners.get(3).subtract(corners.get(0));
        var wide = along.norm();
        var high = up.norm();
        if (wide == 0 || high == 0) {
            return this;
        }
        var middle = middle();
        var halfAlong = along.multiply((wide / 2 + by) / wide);
        var halfUp = up.multiply((high / 2 + by) / high);
        return of(
                middle.subtract(halfAlong).subtract(halfUp),
                middle.add(halfAlong).subtract(halfUp),
                middle.add(halfAlong).add(halfUp),
                middle.subtract(halfAlong).add(halfUp));
    }

    /**
     * A part of a line.
     *
     * @param first share of the length where it begins
     * @param last share of the length where it ends
     */
    public record Inside(double first, double last) {}
}
