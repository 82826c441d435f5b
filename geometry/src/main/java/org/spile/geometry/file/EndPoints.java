package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Makes one point of points that lie within a distance of each other: the first of them stands for all. */
final class EndPoints {
    private final double within;
    private final Map<Long, List<Vector2D>> cells = new HashMap<>();

    EndPoints(double within) {
        this.within = within;
    }

    Vector2D merged(Vector2D point) {
        long column = Math.round(point.getX() / within);
        long row = Math.round(point.getY() / within);
        for (long i = column - 1; i <= column + 1; i++) {
            for (long j = row - 1; j <= row + 1; j++) {
                for (Vector2D known : cells.getOrDefault(cell(i, j), List.of())) {
                    if (known.distance(point) <= within) {
                        return known;
                    }
                }
            }
        }
        cells.computeIfAbsent(cell(column, row), key -> new ArrayList<>()).add(point);
        return point;
    }

    private static long cell(long column, long row) {
        return column * 0x1_0000_0001L ^ row * 0x9E37_79B9L;
    }
}
