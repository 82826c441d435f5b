package org.spile.geometry.house.duct;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;

/**
 * How a section lies across a leg.
 *
 * @param axis unit vector the way the leg goes
 * @param first unit vector along {@code wide}: level; across the trailer on an upright leg
 * @param second unit vector along {@code high}: upright; fore and aft on an upright leg
 */
record Lie(Vector3D axis, Vector3D first, Vector3D second) {
    static Lie across(Vector3D way) {
        Axis main = Axis.nearest(way);
        Axis first = main == Axis.Y ? Axis.X : Axis.Y;
        Axis second = main == Axis.Z ? Axis.X : Axis.Z;
        return new Lie(way, first.unit(), second.unit());
    }

    /** The same laid along another way, near its own. */
    Lie tilted(Vector3D way) {
        Vector3D side = first.subtract(way.multiply(first.dot(way))).normalize();
        return new Lie(
                way,
                side,
                way.cross(side).multiply(Math.signum(axis.cross(first).dot(second))));
    }

    /** A point in the section's plane. */
    Vector3D at(Vector3D middle, double alongFirst, double alongSecond) {
        return middle.add(first.multiply(alongFirst)).add(second.multiply(alongSecond));
    }
}
