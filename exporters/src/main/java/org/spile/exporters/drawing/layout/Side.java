package org.spile.exporters.drawing.layout;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A side of a view, or a direction on it. */
public enum Side {
    /** Towards the top of the sheet. */
    ABOVE(0, 1),
    /** Towards the bottom of the sheet. */
    BELOW(0, -1),
    /** Towards the left. */
    LEFT(-1, 0),
    /** Towards the right. */
    RIGHT(1, 0);

    private final double x;
    private final double y;

    Side(double x, double y) {
        this.x = x;
        this.y = y;
    }

    /** Unit vector out of the view. */
    public Vector2D outward() {
        return Vector2D.of(x, y);
    }

    /** Whether dimension lines on this side run level. */
    boolean level() {
        return this == ABOVE || this == BELOW;
    }
}
