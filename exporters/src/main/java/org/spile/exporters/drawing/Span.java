package org.spile.exporters.drawing;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What a dimension measures: points of the model, never a typed number. */
public sealed interface Span {
    /** The measured length (mm), 0 or above. */
    double measuredMm();

    /** The points that its extension lines start from, first and second. */
    Vector2D from();

    /** The second point. */
    Vector2D to();

    /** Direction of the dimension line, degrees from the x axis, above -90 to 90. */
    double angleDeg();

    /**
     * A distance along a fixed direction: level, upright or any other.
     *
     * @param from first point (mm)
     * @param to second point (mm)
     * @param angleDeg direction measured along, degrees from the x axis
     */
    record Level(Vector2D from, Vector2D to, double angleDeg) implements Span {
        /** Refuses spans of no length. */
        public Level {
            checkLength(along(from, to, angleDeg), from, to);
        }

        @Override
        public double measuredMm() {
            return Math.abs(along(from, to, angleDeg));
        }
    }

    /**
     * The straight distance between two points.
     *
     * @param from first point (mm)
     * @param to second point (mm)
     */
    record Straight(Vector2D from, Vector2D to) implements Span {
        /** Refuses spans of no length. */
        public Straight {
            checkLength(from.distance(to), from, to);
        }

        @Override
        public double measuredMm() {
            return from.distance(to);
        }

        @Override
        public double angleDeg() {
            var along = to.subtract(from);
            return readable(Math.toDegrees(StrictMath.atan2(along.getY(), along.getX())));
        }
    }

    /**
     * A running dimension: how far a feature lies from a datum along an axis.
     *
     * @param from the datum (mm)
     * @param to the feature (mm)
     * @param level true along x, false along y
     */
    record Running(Vector2D from, Vector2D to, boolean level) implements Span {
        /** Refuses places that are none. */
        public Running {
            Places.check(from);
            Places.check(to);
        }

        @Override
        public double measuredMm() {
            return Math.abs(along(from, to, angleDeg()));
        }

        @Override
        public double angleDeg() {
            return level ? 0 : 90;
        }
    }

    /** A direction turned so that words along it read from the bottom or the right: above -90 to 90 degrees. */
    static double readable(double angleDeg) {
        var turned = angleDeg % 180;
        if (turned > 90 + 1e-9) {
            return turned - 180;
        }
        return turned <= -90 + 1e-9 ? turned + 180 : turned;
    }

    private static double along(Vector2D from, Vector2D to, double angleDeg) {
        var way = to.subtract(from);
        if (angleDeg == 0) {
            return way.getX();
        }
        if (angleDeg == 90) {
            return way.getY();
        }
        var angle = Math.toRadians(angleDeg);
        return way.getX() * StrictMath.cos(angle) + way.getY() * StrictMath.sin(angle);
    }

    private static void checkLength(double mm, Vector2D from, Vector2D to) {
        Places.check(from);
        Places.check(to);
        if (!(Math.abs(mm) > 1e-9)) {
            throw new IllegalArgumentException("nothing to measure between " + from + " and " + to);
        }
    }
}
