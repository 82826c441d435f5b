package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Loft;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Slope.Knot;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;

/** What lies between two surfaces that run along one axis: a slab for each straight piece, meeting at mitres. */
final class Slabs {
    private Slabs() {}

    /**
     * One slab for each straight piece of the inner surface.
     *
     * @param inner with points at both ends of its range
     * @param outer where it has as many points they belong to those of the inner one, else it is cut square
     * @param value the axis of their coordinates
     * @param width from side to side along the third axis
     */
    static List<Shape> between(Slope inner, Slope outer, Axis value, Span width) {
        Axis along = inner.along();
        Axis across = third(along, value);
        boolean mitred = inner.knots().size() == outer.knots().size();
        List<Shape> slabs = new ArrayList<>();
        for (int i = 0; i + 1 < inner.knots().size(); i++) {
            Knot a = inner.knots().get(i);
            Knot b = inner.knots().get(i + 1);
            Knot outA = mitred ? outer.knots().get(i) : new Knot(a.at(), outer.at(a.at()));
            Knot outB = mitred ? outer.knots().get(i + 1) : new Knot(b.at(), outer.at(b.at()));
            List<Spot> ring = new ArrayList<>();
            for (Knot knot : List.of(a, b, outB, outA)) {
                ring.add(Spot.ORIGIN.with(along, knot.at()).with(value, knot.value()));
            }
            slabs.add(Loft.between(at(ring, across, width, false), at(ring, across, width, true)));
        }
        return slabs;
    }

    private static List<Spot> at(List<Spot> ring, Axis across, Span width, boolean far) {
        return ring.stream()
                .map(spot -> spot.with(across, far ? width.high() : width.low()))
                .toList();
    }

    static Axis third(Axis one, Axis two) {
        for (Axis axis : Axis.values()) {
            if (axis != one && axis != two) {
                return axis;
            }
        }
        throw new IllegalArgumentException("twice the axis " + one);
    }
}
