package org.spile.geometry.house.spot;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/**
 * A round body along an axis: its points move with the axis, and outwards with its radius.
 *
 * @param from middle of one end
 * @param to middle of the other
 * @param radius mm
 */
public record Rod(Spot from, Spot to, Stack radius) implements Give {
    /**
     * A round body with flat ends.
     *
     * @throws IllegalArgumentException if it has no length or radius
     */
    public static Shape of(Spot from, Spot to, Stack radius) {
        Vector3D a = from.at();
        Vector3D b = to.at();
        double r = radius.valueMm();
        boolean upright = a.getX() == b.getX() && a.getY() == b.getY();
        Solid solid = upright
                ? Prism.round(a.getX(), a.getY(), r, Math.min(a.getZ(), b.getZ()), Math.max(a.getZ(), b.getZ()))
                : RoundCylinder.of(a, b, r);
        return new Shape(Body.of(solid), new Rod(from, to, radius));
    }

    @Override
    public Spot at(Vector3D point) {
        double share = share(point);
        Spot middle = from.toward(to, share);
        Vector3D lever = point.subtract(middle.at());
        double r = radius.valueMm();
        // An axis that tilts takes its flat ends along: what is square to it stays so.
        Spot run = to.minus(from);
        double length = run.at().norm();
        Vector3D axis = run.at().multiply(1 / length);
        Vector3D square = lever.subtract(axis.multiply(lever.dot(axis)));
        return middle.plus(Spot.of(lever))
                .plus(Spot.along(lever.multiply(1 / r), radius.minus(r)))
                .plus(Spot.along(axis.negate(), run.dot(square).times(1 / length)))
                .exactly(point);
    }

    private double share(Vector3D point) {
        Vector3D a = from.at();
        Vector3D axis = to.at().subtract(a);
        double t = point.subtract(a).dot(axis) / axis.normSq();
        return Math.max(0, Math.min(1, t));
    }

    @Override
    public double outsideMm(Vector3D point) {
        Vector3D a = from.at();
        Vector3D axis = to.at().subtract(a).normalize();
        double along = point.subtract(a).dot(axis);
        double across = point.subtract(a).subtract(axis.multiply(along)).norm();
        double ends = Math.max(-along, along - to.at().distance(a));
        return Math.max(ends, across - radius.valueMm());
    }

    /** The distance of two straight lines is convex along one of them: thirds close in on the least. */
    @Override
    public boolean meets(Vector3D start, Vector3D end) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 80; i++) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            if (outsideMm(start.lerp(end, a)) <= outsideMm(start.lerp(end, b))) {
                high = b;
            } else {
                low = a;
            }
        }
        return outsideMm(start.lerp(end, (low + high) / 2)) <= 1e-6;
    }
}
