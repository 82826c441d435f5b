package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Patch;

/** What is drawn already, so that the next text, arrow or line can keep off it. Grows while a view is laid out. */
final class Ground {
    /** What a patch is, for those who must keep off it. */
    enum Kind {
        TEXT,
        ARROW,
        /** Wide lines of the drawing itself. */
        HEAVY,
        /** Narrow lines of the drawing itself. */
        NARROW,
        /** Dimension lines, extension lines, leaders. */
        THREAD,
        /** A dimension line with its text, as one block. */
        BODY
    }

    /** A patch and the rectangle round it, kept so that most comparisons need no more than that. */
    private record Piece(Patch patch, Extent extent) {}

    private final double cell;
    private final Map<Kind, Map<Long, List<Piece>>> cells = new EnumMap<>(Kind.class);

    /**
     * An empty ground.
     *
     * @param unitsPerMm drawing units for one millimetre on paper
     */
    Ground(double unitsPerMm) {
        this.cell = 15 * unitsPerMm;
        for (var kind : Kind.values()) {
            cells.put(kind, new LinkedHashMap<>());
        }
    }

    void add(Kind kind, Patch patch) {
        var map = cells.get(kind);
        var piece = new Piece(patch, patch.extent());
        for (var key : keys(piece.extent())) {
            map.computeIfAbsent(key, none -> new ArrayList<>()).add(piece);
        }
    }

    /** Whether a patch keeps a distance from all of a kind. */
    boolean clear(Kind kind, Patch patch, double distance) {
        var map = cells.get(kind);
        if (map.isEmpty()) {
            return true;
        }
        var extent = patch.extent();
        for (var key : keys(extent.grown(Math.max(0, distance)))) {
            for (var other : map.getOrDefault(key, List.of())) {
                if (extent.nearer(other.extent(), distance) && patch.nearer(other.patch(), distance)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** All of a kind that a patch comes near to, each once, in the order they were added. */
    List<Patch> near(Kind kind, Patch patch, double distance) {
        var found = new ArrayList<Patch>();
        for (var key : keys(patch.extent().grown(distance))) {
            for (var other : cells.get(kind).getOrDefault(key, List.of())) {
                if (!found.contains(other.patch()) && patch.nearer(other.patch(), distance)) {
                    found.add(other.patch());
                }
            }
        }
        return found;
    }

    private List<Long> keys(Extent extent) {
        var keys = new ArrayList<Long>();
        var lastX = index(extent.maxX());
        var lastY = index(extent.maxY());
        for (var x = index(extent.minX()); x <= lastX; x++) {
            for (var y = index(extent.minY()); y <= lastY; y++) {
                keys.add(x * 0x1_0000_0001L ^ y << 20);
            }
        }
        return keys;
    }

    private long index(double at) {
        return (long) Math.floor(at / cell);
    }
}
