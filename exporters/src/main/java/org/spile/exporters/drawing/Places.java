package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The one rule for coordinates on drawings, and how they are turned and shifted. */
final class Places {
    /** Ten thousand kilometres: beyond it a coordinate is a mistake, and tenths of a millimetre would be lost. */
    private static final double FARTHEST_MM = 1e10;

    private Places() {}

    static Vector2D check(Vector2D at) {
        if (!at.isFinite() || Math.abs(at.getX()) > FARTHEST_MM || Math.abs(at.getY()) > FARTHEST_MM) {
            throw new IllegalArgumentException("place " + at + " is not a finite one within " + FARTHEST_MM + " mm");
        }
        return at;
    }

    static double checkLength(double mm, String what) {
        if (!(mm > 0 && mm <= FARTHEST_MM)) {
            throw new IllegalArgumentException(what + " " + mm + " is not a length above 0 mm");
        }
        return mm;
    }

    /** A point turned about the origin and then shifted. */
    static Vector2D put(Vector2D at, double turnDeg, Vector2D shift) {
        var turned = at;
        if (turnDeg != 0) {
            var cos = StrictMath.cos(Math.toRadians(turnDeg));
            var sin = StrictMath.sin(Math.toRadians(turnDeg));
            turned = Vector2D.of(cos * at.getX() - sin * at.getY(), sin * at.getX() + cos * at.getY());
        }
        return turned.add(shift);
    }

    /** Line pieces between points, as patches. */
    static List<Patch> pieces(List<Vector2D> points) {
        var pieces = new ArrayList<Patch>();
        for (var i = 1; i < points.size(); i++) {
            pieces.add(Patch.of(points.get(i - 1), points.get(i)));
        }
        return pieces;
    }
}
