package org.spile.exporters.drawing;

import java.util.Collection;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * An upright rectangle.
 *
 * @param minX left (mm)
 * @param minY bottom (mm)
 * @param maxX right, not below left
 * @param maxY top, not below bottom
 */
public record Extent(double minX, double minY, double maxX, double maxY) {
    /** Refuses rectangles that are inside out or not finite. */
    public Extent {
        if (!(minX <= maxX && minY <= maxY) || !Double.isFinite(maxX - minX) || !Double.isFinite(maxY - minY)) {
            throw new IllegalArgumentException(
                    "extent " + minX + " " + minY + " to " + maxX + " " + maxY + " is not a finite rectangle");
        }
    }

    /** From a lower left corner and sizes (mm). */
    public static Extent ofSize(double x, double y, double wide, double high) {
        return new Extent(x, y, x + wide, y + high);
    }

    /**
     * The least rectangle round points.
     *
     * @param points at least one
     */
    public static Extent around(Collection<Vector2D> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("no points: nothing to go round");
        }
        var minX = Double.POSITIVE_INFINITY;
        var minY = Double.POSITIVE_INFINITY;
        var maxX = Double.NEGATIVE_INFINITY;
        var maxY = Double.NEGATIVE_INFINITY;
        for (var point : points) {
            minX = Math.min(minX, point.getX());
            minY = Math.min(minY, point.getY());
            maxX = Math.max(maxX, point.getX());
            maxY = Math.max(maxY, point.getY());
        }
        return new Extent(minX, minY, maxX, maxY);
    }

    /** Width (mm). */
    public double wide() {
        return maxX - minX;
    }

    /** Height (mm). */
    public double high() {
        return maxY - minY;
    }

    /** Its middle. */
    public Vector2D middle() {
        return Vector2D.of((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** Its lower left corner. */
    public Vector2D corner() {
        return Vector2D.of(minX, minY);
    }

    /** The corners, counter-clockwise from the lower left. */
    public List<Vector2D> corners() {
        return List.of(
                Vector2D.of(minX, minY), Vector2D.of(maxX, minY), Vector2D.of(maxX, maxY), Vector2D.of(minX, maxY));
    }

    /** The least rectangle round this and another. */
    public Extent and(Extent other) {
        return new Extent(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** The rectangle with its sides moved outwards (mm). */
    public Extent grown(double mm) {
        return new Extent(minX - mm, minY - mm, maxX + mm, maxY + mm);
    }

    /** The rectangle shifted. */
    public Extent shifted(Vector2D by) {
        return new Extent(minX + by.getX(), minY + by.getY(), maxX + by.getX(), maxY + by.getY());
    }

    /** Whether it holds the whole of another, edges included, within a slack (mm). */
    public boolean holds(Extent other, double slackMm) {
        return other.minX >= minX - slackMm
                && other.minY >= minY - slackMm
                && other.maxX <= maxX + slackMm
                && other.maxY <= maxY + slackMm;
    }

    /** Whether it comes nearer to another than a distance along one axis and the other, or overlaps it (mm). */
    public boolean nearer(Extent other, double distanceMm) {
        return minX - other.maxX < distanceMm
                && other.minX - maxX < distanceMm
                && minY - other.maxY < distanceMm
                && other.minY - maxY < distanceMm;
    }

    /** Whether it shares inner area with another; touching edges don't count. */
    public boolean overlaps(Extent other) {
        return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
    }
}
