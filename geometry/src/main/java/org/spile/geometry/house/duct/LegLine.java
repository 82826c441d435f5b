package org.spile.geometry.house.duct;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Way;

/**
 * The middle line of what a leg's bends leave of it, its end sections, and how a section square to its axis is seen along its path.
 *
 * <p>The path is the middle line. A transition that keeps a side moves the middle, but the air runs on along the side kept:
 * there only what the leg slants besides counts as shear. A slanted leg is sheared; but a round pipe between square ends or
 * bends is laid aslant as it is.
 */
final class LegLine {
    private static final double SHOWN_MM = 0.01;

    private final Lie lie;
    private final Vector3D from;
    private final Vector3D to;
    private final Clear start;
    private final Clear end;
    private final double lengthMm;
    private final Vector3D heading;
    private final double squareness;
    private final double firstSeen;
    private final double secondSeen;
    private final double circleSeen;

    /**
     * @param cutBefore how much the bend before it takes of the leg, along its axis (mm)
     * @param cutAfter how much the bend after it takes
     * @param mitred whether it ends in a mitre
     */
    LegLine(DuctLeg leg, double cutBefore, double cutAfter, boolean mitred) {
        this.from = leg.from().add(leg.axis().multiply(cutBefore));
        this.to = leg.to().subtract(leg.axis().multiply(cutAfter));
        this.start = Clear.of(leg.start());
        this.end = Clear.of(leg.end());
        this.lengthMm = to.subtract(from).norm();
        Vector3D slant = to.subtract(from).subtract(kept(leg, Lie.across(leg.axis())));
        this.heading = slant.multiply(1 / slant.norm());
        Lie across = Lie.across(leg.axis());
        boolean pipe = leg.start() instanceof Section.Round && !leg.transition() && !mitred;
        this.lie = pipe ? across.tilted(heading) : across;
        this.squareness = heading.dot(lie.axis());
        this.firstSeen = seen(heading.dot(lie.first()));
        this.secondSeen = seen(heading.dot(lie.second()));
        this.circleSeen = Ellipse.perimeter(1, squareness);
    }

    /** How a length along a direction is seen square to the heading, given their cosine. */
    private static double seen(double cosine) {
        return Math.sqrt(1 - cosine * cosine);
    }

    /** How far the middle moves because a side is kept. */
    private static Vector3D kept(DuctLeg leg, Lie lie) {
        Vector3D side = Way.outOf(leg.flush()).map(Way::unit).orElse(Vector3D.ZERO);
        double wide = leg.start().wideMm() - leg.end().wideMm();
        double high = leg.start().highMm() - leg.end().highMm();
        return lie.first()
                .multiply(0.5 * wide * side.dot(lie.first()))
                .add(lie.second().multiply(0.5 * high * side.dot(lie.second())));
    }

    Lie lie() {
        return lie;
    }

    Clear start() {
        return start;
    }

    Clear end() {
        return end;
    }

    double lengthMm() {
        return lengthMm;
    }

    /** Cosine between the path and the axis: {@code L / sqrt(L2 + e2)}. */
    double squareness() {
        return squareness;
    }

    double firstSeen() {
        return firstSeen;
    }

    double secondSeen() {
        return secondSeen;
    }

    /** Perimeter of a circle of radius 1 square to the axis, seen along the path. */
    double circleSeen() {
        return circleSeen;
    }

    /** Whether its ends lie out of line by what can be shown. */
    boolean sheared() {
        return alongMm() * Math.sqrt(1 - squareness * squareness) > SHOWN_MM * squareness;
    }

    /** Unit vector the air goes. */
    Vector3D heading() {
        return heading;
    }

    /** How far it goes along its axis (mm). */
    double alongMm() {
        return to.subtract(from).dot(lie.axis());
    }

    Vector3D middle(double share) {
        return from.lerp(to, share);
    }
}
