package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A piece of a circle.
 *
 * @param centre its middle
 * @param radius its radius
 * @param fromRad the direction of its start from the middle
 * @param turnRad how far it goes round, positive counter-clockwise
 */
record Arc(Vector2D centre, double radius, double fromRad, double turnRad) {
    /** How far a chord may leave its arc, mm. */
    static final double SAGITTA_MM = 0.05;

    /** Corners nearer than this make an outline worse, not better, mm. */
    private static final double LEAST_CHORD_MM = 0.11;

    /**
     * The arc that a bulge makes of the side between two corners.
     *
     * <p>A bulge is the tangent of a quarter of the arc's turn, positive counter-clockwise (published DXF reference, group
     * code 42). With chord c and bulge b the radius is c (1 + b^2) / (4 b), the middle c (1 - b^2) / (4 b) left of the
     * chord.
     */
    static Arc bulged(Vector2D from, Vector2D to, double bulge) {
        Vector2D chord = to.subtract(from);
        Vector2D left = Vector2D.of(-chord.getY(), chord.getX());
        Vector2D middle = from.add(chord.multiply(0.5)).add(left.multiply((1 - bulge * bulge) / (4 * bulge)));
        Vector2D start = from.subtract(middle);
        return new Arc(middle, start.norm(), StrictMath.atan2(start.getY(), start.getX()), 4 * StrictMath.atan(bulge));
    }

    /** Where it starts. */
    Vector2D start() {
        return at(0);
    }

    /** Where it ends. */
    Vector2D end() {
        return at(1);
    }

    /**
     * Points on it after its start and before its end, so many that no chord leaves it by more than {@link #SAGITTA_MM}.
     *
     * <p>A chord over the angle w leaves its arc by r (1 - cos(w / 2)).
     */
    List<Vector2D> between() {
        double widest = radius <= SAGITTA_MM ? Math.PI : 2 * StrictMath.acos(1 - SAGITTA_MM / radius);
        double wanted = Math.ceil(Math.abs(turnRad) / widest);
        double useful = Math.floor(Math.abs(turnRad) * radius / LEAST_CHORD_MM);
        int pieces = (int) Math.max(1, Math.min(wanted, useful));
        var points = new ArrayList<Vector2D>();
        for (int i = 1; i < pieces; i++) {
            points.add(at((double) i / pieces));
        }
        return points;
    }

    private Vector2D at(double share) {
        double angle = fromRad + share * turnRad;
        return centre.add(Vector2D.of(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
}
