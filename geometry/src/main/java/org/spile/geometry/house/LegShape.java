package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.duct.LegBodies;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.kernel.solid.Body;

/**
 * The outside of a leg.
 *
 * @param whole all of it
 * @param bodies the same in the parts it is made of
 */
record LegShape(Shape whole, LegBodies bodies) {
    /** Parts of which at least one is there. */
    static LegShape of(List<Shape> bendBefore, Optional<Shape> straight, List<Shape> bendAfter) {
        List<Shape> all = new ArrayList<>(bendBefore);
        all.addAll(bendAfter);
        straight.ifPresent(all::add);
        return new LegShape(
                Shape.union(all), new LegBodies(body(bendBefore), straight.map(Shape::body), body(bendAfter)));
    }

    private static Optional<Body> body(List<Shape> arcs) {
        return arcs.isEmpty() ? Optional.empty() : Optional.of(Shape.union(arcs).body());
    }
}
