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
 * Finds room for a block of words or a flag near the point it speaks of: near, with leaders at 15 to 75 degrees
 * (ISO 128) that cross little. Texts, arrows and wide lines are kept off in any case. Beyond all that is drawn there always is room.
 */
final class Pointing {
    private static final double[] ANGLES_DEG = {
        45, 135, -45, -135, 30, 150, -30, -150, 60, 120, -60, -120, 20, 160, 75, 105
    };
    private static final List<Vector2D> SLIDES = List.of(
            Vector2D.of(0, 1),
            Vector2D.of(0, -1),
            Vector2D.of(-2, 0),
            Vector2D.of(2, 0),
            Vector2D.of(-2, 1),
            Vector2D.of(2, 1),
            Vector2D.of(-2, -1),
            Vector2D.of(2, -1));
    private static final double SLIDE_MM = 1.5;
    private static final double FARTHEST_SLIDE_MM = 9;
    private static final int RINGS = 14;
    private static final double RING_MM = 4;
    private static final double FIRST_RING_MM = 7;
    private static final double LATER_ANGLE_MM = 0.2;
    private static final double CROSSED_THREAD_MM = 8;
    private static final double CROSSED_EDGE_MM = 2;
    private static final double COVERED_LINE_MM = 30;

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
        var box = box(point, wideMm, highMm);
        return free(box) && ground.clear(Ground.Kind.NARROW, box, 0.4 * unit);
    }

    /** The nearest place a few millimetres from a point where a block can stand with no line between: no leader needed. */
    Optional<Vector2D> standsNear(Vector2D point, double wideMm, double highMm) {
        for (var stepMm = SLIDE_MM; stepMm <= FARTHEST_SLIDE_MM; stepMm += SLIDE_MM) {
            for (var way : SLIDES) {
                var place = point.add(way.multiply(stepMm * unit));
                var between = Patch.of(point, place);
                if (standsOn(place, wideMm, highMm)
                        && ground.clear(Ground.Kind.HEAVY, between, 0)
                        && ground.clear(Ground.Kind.NARROW, between, 0)
                        && ground.clear(Ground.Kind.THREAD, between, 0)) {
                    return Optional.of(place);
                }
            }
        }
        return Optional.empty();
    }

    /** The best free place beside a point, for a block of a size on paper: near, its leader crossing little. */
    Spot beside(Vector2D point, double wideMm, double highMm) {
        Spot best = null;
        var least = Double.POSITIVE_INFINITY;
        for (var ring = 0; ring < RINGS; ring++) {
            var reach = FIRST_RING_MM + ring * RING_MM;
            for (var i = 0; i < ANGLES_DEG.length && reach < least; i++) {
                var spot = spot(point, wideMm, ANGLES_DEG[i], reach);
                if (free(box(spot.middle(), wideMm, highMm)) && leaderFree(point, spot)) {
                    var cost = reach + LATER_ANGLE_MM * i + crossings(point, spot, wideMm, highMm);
                    if (cost < least) {
                        least = cost;
                        best = spot;
                    }
                }
            }
        }
        return best != null
                ? best
                : beyond(point, wideMm, highMm).orElseThrow(() -> new IllegalStateException("no room beside " + point));
    }

    /** What a place is worse for what it crosses, as millimetres of leader one would rather draw. */
    private double crossings(Vector2D point, Spot spot, double wideMm, double highMm) {
        var leader = Patch.of(point, spot.joint());
        var covered = ground.clear(Ground.Kind.NARROW, box(spot.middle(), wideMm, highMm), 0.4 * unit);
        return ground.near(Ground.Kind.THREAD, leader, 0).size() * CROSSED_THREAD_MM
                + ground.near(Ground.Kind.HEAVY, leader, 0).size() * CROSSED_EDGE_MM
                + (covered ? 0 : COVERED_LINE_MM);
    }

    /** Farther and farther out; the leader may be interrupted at texts. */
    private Optional<Spot> beyond(Vector2D point, double wideMm, double highMm) {
        for (var ring = RINGS; ring < 100_000; ring++) {
            for (var angle : ANGLES_DEG) {
                var spot = spot(point, wideMm, angle, FIRST_RING_MM + ring * RING_MM);
                if (free(box(spot.middle(), wideMm, highMm))) {
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

    private boolean free(Patch box) {
        return ground.clear(Ground.Kind.TEXT, box, 0.9 * unit)
                && ground.clear(Ground.Kind.ARROW, box, 0.6 * unit)
                && ground.clear(Ground.Kind.HEAVY, box, 0.8 * unit)
                && ground.clear(Ground.Kind.THREAD, box, 0.6 * unit)
                && ground.clear(Ground.Kind.BODY, box, 0.3 * unit);
    }

    private boolean leaderFree(Vector2D point, Spot spot) {
        var leader = Patch.of(point, spot.joint());
        return ground.clear(Ground.Kind.TEXT, leader, 0.5 * unit)
                && ground.clear(Ground.Kind.ARROW, leader, 0.3 * unit);
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
