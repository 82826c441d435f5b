package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.ConvexParts;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Prism;

/**
 * A plan outline whose corners know what they rest on; counter-clockwise, without holes.
 *
 * @param corners at height 0, at least three
 */
public record Plan(List<Spot> corners) {
    /** Sides this far from an axis (as a slope) are along it: rounding only. */
    private static final double SQUARE = 1e-9;

    /** Copies the corners. */
    public Plan {
        corners = List.copyOf(corners);
    }

    /** A side of it, from one corner to the next. */
    public record Side(int index, Spot from, Spot to, Vector3D outward) {
        /** The way it looks most. */
        public Way way() {
            return Way.nearest(outward);
        }
    }

    /** A rectangle. */
    public static Plan rectangle(Span x, Span y) {
        return new Plan(List.of(
                new Spot(x.low(), y.low(), Stack.ZERO),
                new Spot(x.high(), y.low(), Stack.ZERO),
                new Spot(x.high(), y.high(), Stack.ZERO),
                new Spot(x.low(), y.high(), Stack.ZERO)));
    }

    /**
     * A fixed outline, its own origin set down at a spot.
     *
     * @throws IllegalArgumentException if the outline has holes
     */
    public static Plan of(Outline outline, Spot origin) {
        if (!outline.holes().isEmpty()) {
            throw new IllegalArgumentException("a plan takes no holes: " + outline);
        }
        return new Plan(outline.shell().stream()
                .map(p -> new Spot(origin.x().plus(p.getX()), origin.y().plus(p.getY()), Stack.ZERO))
                .toList());
    }

    /** Its sides, the first from the first corner to the second. */
    public List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot from = corners.get(i);
            Spot to = corners.get((i + 1) % corners.size());
            Vector3D along = to.at().subtract(from.at()).normalize();
            sides.add(new Side(i, from, to, Vector3D.of(along.getY(), -along.getX(), 0)));
        }
        return sides;
    }

    /** The nominal outline. */
    public Outline outline() {
        return Outline.of(corners.stream()
                .map(spot -> Vector2D.of(spot.x().valueMm(), spot.y().valueMm()))
                .toList());
    }

    /** From the least to the greatest coordinate along an axis. */
    public Span extent(Axis axis) {
        Stack low = corners.stream()
                .map(spot -> spot.get(axis))
                .reduce(FirstOrder::lesser)
                .orElseThrow();
        Stack high = corners.stream()
                .map(spot -> spot.get(axis))
                .reduce(FirstOrder::greater)
                .orElseThrow();
        return new Span(low, high);
    }

    /** Whether it is four sides along the axes. */
    public boolean isRectangle() {
        return corners.size() == 4 && sides().stream().allMatch(Plan::square);
    }

    private static boolean square(Side side) {
        return side.way().unit().distance(side.outward()) < SQUARE;
    }

    /**
     * The outline with each side moved inwards, square to itself, its neighbours meeting it.
     *
     * @param by for each side how far (mm), negative outwards
     */
    public Plan inset(List<Stack> by) {
        List<Spot> moved = new ArrayList<>();
        List<Side> sides = sides();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            moved.add(corners.get(i).plus(shift(sides.get(before), by.get(before), sides.get(i), by.get(i))));
        }
        return new Plan(moved);
    }

    /** The shift s with s · n1 = t1 and s · n2 = t2 for the inward normals of two sides. */
    private static Spot shift(Side one, Stack t1, Side two, Stack t2) {
        Vector3D n1 = one.outward().negate();
        Vector3D n2 = two.outward().negate();
        double turn = n1.getX() * n2.getY() - n1.getY() * n2.getX();
        if (Math.abs(turn) < 1e-9) {
            return Spot.along(n1, t1);
        }
        Stack x = t1.times(n2.getY() / turn).minus(t2.times(n1.getY() / turn));
        Stack y = t2.times(n1.getX() / turn).minus(t1.times(n2.getX() / turn));
        return new Spot(x, y, Stack.ZERO);
    }

    /**
     * The upright body over it.
     *
     * @throws IllegalArgumentException if it has no height
     */
    public Shape upright(Stack bottom, Stack top) {
        Outline outline = outline();
        if (outline.isConvex()) {
            return piece(corners, bottom, top);
        }
        List<Shape> pieces = new ArrayList<>();
        for (Outline part : ConvexParts.of(outline)) {
            pieces.add(piece(part.shell().stream().map(this::nearestCorner).toList(), bottom, top));
        }
        Body whole = Body.of(Prism.of(outline, bottom.valueMm(), top.valueMm()));
        return new Shape(whole, Shape.union(pieces).give());
    }

    private static Shape piece(List<Spot> ring, Stack bottom, Stack top) {
        return Loft.between(
                ring.stream().map(spot -> spot.with(Axis.Z, bottom)).toList(),
                ring.stream().map(spot -> spot.with(Axis.Z, top)).toList());
    }

    /** The corner of this plan that a convex part's corner is; parts have no others. */
    private Spot nearestCorner(Vector2D corner) {
        Vector3D at = Vector3D.of(corner.getX(), corner.getY(), 0);
        Spot best = corners.get(0);
        for (Spot spot : corners) {
            if (spot.at().distance(at) < best.at().distance(at)) {
                best = spot;
            }
        }
        return best;
    }
}
