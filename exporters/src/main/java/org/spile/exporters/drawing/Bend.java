package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A bent piece of a polyline as part of a circle.
 *
 * <pre>
 *   bulge b = tan(sweep / 4)      centre = middle + i (q − p) (1 − b²) / (4 b)
 * </pre>
 *
 * @param centre of the circle (mm)
 * @param radiusMm of the circle
 * @param startRad direction from the centre to the start
 * @param sweepRad angle swept, positive counter-clockwise
 */
public record Bend(Vector2D centre, double radiusMm, double startRad, double sweepRad) {
    /** How far a chord may be from its bend when only touching matters (mm on paper). */
    static final double PAPER_SAGITTA_MM = 0.05;

    /** Below this bulge a piece is straight: 1e-9 of a 10 m chord rises 5 nm. */
    private static final double STRAIGHT = 1e-9;

    /**
     * The bent piece that starts at a corner.
     *
     * @param from the corner and its bulge
     * @param to the next corner
     * @return empty if the piece is straight or of no length
     */
    public static Optional<Bend> between(Vertex from, Vector2D to) {
        var b = from.bulge();
        var chord = to.subtract(from.at());
        if (Math.abs(b) < STRAIGHT || chord.norm() == 0) {
            return Optional.empty();
        }
        var rise = (1 - b * b) / (4 * b);
        var middle = from.at().lerp(to, 0.5);
        var centre = middle.add(Vector2D.of(-chord.getY() * rise, chord.getX() * rise));
        var arm = from.at().subtract(centre);
        var sweep = 4 * StrictMath.atan(b);
        return Optional.of(new Bend(centre, arm.norm(), StrictMath.atan2(arm.getY(), arm.getX()), sweep));
    }

    /** The whole or part of a circle, angles in degrees, counter-clockwise from start to end. */
    static Bend ofDegrees(Vector2D centre, double radiusMm, double startDeg, double sweepDeg) {
        return new Bend(centre, radiusMm, Math.toRadians(startDeg), Math.toRadians(sweepDeg));
    }

    /** The point at a share of the sweep, 0 to 1. */
    public Vector2D at(double share) {
        var angle = startRad + share * sweepRad;
        return centre.add(Vector2D.of(radiusMm * StrictMath.cos(angle), radiusMm * StrictMath.sin(angle)));
    }

    /**
     * Points between the ends, close enough that no chord is farther from the circle than asked.
     *
     * @param sagittaMm largest distance of a chord from the circle (mm), above 0
     */
    List<Vector2D> between(double sagittaMm) {
        // sagitta = r (1 - cos(step / 2)); a step is never above an eighth of a turn
        var share = Math.min(1, sagittaMm / radiusMm);
        var step = Math.min(Math.PI / 4, 2 * StrictMath.acos(1 - share));
        var pieces = (int) Math.min(720, Math.max(1, Math.ceil(Math.abs(sweepRad) / Math.max(step, 1e-3))));
        var points = new ArrayList<Vector2D>();
        for (var i = 1; i < pieces; i++) {
            points.add(at((double) i / pieces));
        }
        return points;
    }
}
