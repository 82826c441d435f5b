package org.spile.geometry.house.spot;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** How the points of a body move with the readings. */
public interface Give {
    /**
     * A point of the body with what it rests on.
     *
     * @param point on or in the body, nominal (mm)
     * @return a spot that is nominally at that point
     */
    Spot at(Vector3D point);

    /** How far a point is outside (mm); 0 or less inside, only roughly so far off. */
    double outsideMm(Vector3D point);

    /** Whether a straight line touches or enters the body. */
    boolean meets(Vector3D from, Vector3D to);
}
