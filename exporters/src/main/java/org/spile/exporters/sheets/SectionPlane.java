package org.spile.exporters.sheets;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.measure.Written;

/**
 * An upright plane through a trailer, and how what it cuts is laid flat: along to the right, height up.
 *
 * @param trailer the trailer cut
 * @param across whether it runs across the trailer (seen looking forward) or lengthwise (seen looking left)
 * @param offsetMm where: forward of the deck's rear edge, or left of its middle (mm)
 */
record SectionPlane(TrailerPlace trailer, boolean across, double offsetMm) {
    /** A point of the plane in the site frame. */
    Vector3D through() {
        return trailer.toSite().apply(across ? Vector3D.of(offsetMm, 0, 0) : Vector3D.of(0, offsetMm, 0));
    }

    /** The view's right hand in the site frame. */
    Vector3D along() {
        return trailer.toSite().applyDirection(across ? Vector3D.of(0, -1, 0) : Vector3D.of(1, 0, 0));
    }

    /** The way it is looked through, in the site frame. */
    Vector3D looks() {
        return trailer.toSite().applyDirection(across ? Vector3D.of(1, 0, 0) : Vector3D.of(0, 1, 0));
    }

    /** Azimuth of {@link #along} (rad). */
    double azimuthRad() {
        return StrictMath.atan2(along().getY(), along().getX());
    }

    /** A point of the site, laid flat into the view. */
    Vector2D flat(Vector3D site) {
        return Vector2D.of(site.subtract(through()).dot(along()), site.getZ());
    }

    /** How far a point lies off the plane (mm). */
    double offPlaneMm(Vector3D site) {
        return site.subtract(through()).dot(looks());
    }

    /** The same in a few words, where there is little room. */
    String briefly() {
        String offset = Written.number(Math.abs(offsetMm), 0);
        return across ? offset + " from the rear" : offset + (offsetMm < 0 ? " right" : " left") + " of the middle";
    }

    /** Where it is cut, in words. */
    String words() {
        if (across) {
            return "cut " + Written.number(offsetMm, 0) + " forward of the rear edge" + Subjects.of(trailer)
                    + ", looking forward";
        }
        String side = offsetMm < 0 ? " right of" : " left of";
        return offsetMm == 0
                ? "cut along the middle" + Subjects.of(trailer) + ", looking left"
                : "cut " + Written.number(Math.abs(offsetMm), 0) + side + " the middle" + Subjects.of(trailer)
                        + ", looking left";
    }
}
