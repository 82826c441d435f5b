package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;

/**
 * Finds room for a block of words or a flag near the point it speaks of: nearest first, leaders at 15 to 75 degrees
 * (ISO 128), kept off texts, arrows and lines. Beyond all that is drawn there always is room.
 */
final class Pointing {
    private static final double[] ANGLES_DEG = {
        45, 135, -45, -135, 30, 150, -30, -150, 60, 120, -60, -120, 20, 160, 75, 105
    };
    private static final int CAREFUL_RINGS = 14;
    private static final double RING_MM = 4;
    private static final double FIRST_RING_MM = 7;

    private final Ground ground;
    private final double unit;

    Pointing(Ground ground, double unit) {
        this.ground = ground;
        this.unit = unit;
    }

    /**
     * A place for a block.
     *
     * @param middle of the block (model mm)
     * @param joint where the leader meets the block (model mm)
     */
    record Spot(Vector2D middle, Vector2D joint) {}

    /** Whether a block of a size can stand on a point itself. */
    boolean standsOn(Vector2D point, double wideMm, double highMm) {
        return free(box(point, wideMm, highMm), true);
    }

    /** The nearest free place beside a point, for a block of a size on paper. */
    Spot beside(Vector2D point, double wideMm, double highMm) {
        for (var careful : List.of(true, false)) {
            for (var ring = 0; ring < CAREFUL_RINGS; ring++) {
                for (var angle : ANGLES_DEG) {
                    var spot = spot(point, wideMm, angle, FIRST_RING_MM + ring * RING_MM);
                    if (free(box(spot.middle(), wideMm, highMm), careful) && leaderFree(point, spot, careful)) {
                        return spot;
                    }
                }
            }
        }
        return beyond(point, wideMm, highMm).orElseThrow(() -> new IllegalStateException("no room beside " + point));
    }

    /** Farther and farther out; the leader may be interrupted at texts. */
    private Optional<Spot> beyond(Vector2D point, double wideMm, double highMm) {
        for (var ring = CAREFUL_RINGS; ring < 100_000; ring++) {
            for (var angle : ANGLES_DEG) {
                var spot = spot(point, wideMm, angle, FIRST_RING_MM + ring * RING_MM);
                if (free(box(spot.middle(), wideMm, highMm), true)) {
                    return Optional.of(spot);
                }
            }
        }
        return Optional.empty();
    }

    private Spot spot(Vector2D point, double wideMm, double angleDeg, double reachMm) {
        var angle = Math.toRadians(angleDeg);
        var way = Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle)).multiply(reachMm * unit);
        var joint = point.add(way);
        var sideways = (wideMm / 2 + 0.8) * unit * Math.signum(way.getX());
        return new Spot(joint.add(Vector2D.of(sideways, 0)), joint);
    }

    private boolean free(Patch box, boolean careful) {
        return ground.clear(Ground.Kind.TEXT, box, 0.9 * unit)
                && ground.clear(Ground.Kind.ARROW, box, 0.6 * unit)
                && ground.clear(Ground.Kind.HEAVY, box, 0.8 * unit)
                && ground.clear(Ground.Kind.THREAD, box, 0.6 * unit)
                && ground.clear(Ground.Kind.BODY, box, 0.3 * unit)
                && (!careful || ground.clear(Ground.Kind.NARROW, box, 0.4 * unit));
    }

    private boolean leaderFree(Vector2D point, Spot spot, boolean careful) {
        var leader = Patch.of(point, spot.joint());
        return ground.clear(Ground.Kind.TEXT, leader, 0.5 * unit)
                && ground.clear(Ground.Kind.ARROW, leader, 0.3 * unit)
                && (!careful || ground.clear(Ground.Kind.THREAD, leader, 0));
    }

    /** A leader from a point to a spot, interrupted at texts if it must be. */
    List<Line> leader(Pen pen, Vector2D point, Spot spot) {
        var lines = new ArrayList<>(Threads.broken(pen, point, spot.joint(), ground, unit));
        lines.forEach(line -> ground.add(Ground.Kind.THREAD, Patch.of(line.from(), line.to())));
        return lines;
    }

    /** An upright box round a point, sizes on paper. */
    Patch box(Vector2D middle, double wideMm, double highMm) {
        var x = wideMm / 2 * unit;
        var y = highMm / 2 * unit;
        return Patch.of(
                middle.add(Vector2D.of(-x, -y)),
                middle.add(Vector2D.of(x, -y)),
                middle.add(Vector2D.of(x, y)),
                middle.add(Vector2D.of(-x, y)));
    }

    static Pen notes(String part) {
        return Layer.NOTES.pen().of(part);
    }
}
