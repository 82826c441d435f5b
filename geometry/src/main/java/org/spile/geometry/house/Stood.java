package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Rod;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A thing in its place.
 *
 * @param in what it is placed in
 * @param own its box along its own axes (long, wide, high), as it would stand before it is turned about its middle
 * @param turn that turn, in the trailer's frame
 * @param rod the own axis of a round thing
 * @param plan its outline, if it has one, turned and in place
 * @param more its further boxes, along its own axes
 */
record Stood(
        Placed placed, Enclosure in, Block own, Rigid turn, Optional<Axis> rod, Optional<Plan> plan, List<Block> more) {
    Stood {
        more = List.copyOf(more);
    }

    Stood with(List<Block> boxes) {
        return new Stood(placed, in, own, turn, rod, plan, boxes);
    }

    /** The same thing, lower or higher by what it moves in use. */
    Stood lifted(Stack by) {
        return by.layers().isEmpty()
                ? this
                : new Stood(
                        placed,
                        in,
                        own.lifted(by),
                        turn,
                        rod,
                        plan,
                        more.stream().map(box -> box.lifted(by)).toList());
    }

    /** Its faces along its own axes. */
    Enclosure faces() {
        return Enclosure.body(placed.id(), in.trailer(), own.x(), own.y(), own.z());
    }

    /** Its first body in the trailer's frame. */
    Shape shape() {
        if (plan.isPresent()) {
            return plan.get().upright(own.z().low(), own.z().high());
        }
        if (rod.isPresent()) {
            return rod(own, rod.get()).moved(turn);
        }
        return own.shape().moved(turn);
    }

    static Shape rod(Block box, Axis axis) {
        Spot middle = box.middle();
        Spot from = middle.with(axis, box.get(axis).low());
        Spot to = middle.with(axis, box.get(axis).high());
        Axis square = axis == Axis.Z ? Axis.X : Axis.Z;
        Stack radius = box.get(square).size().times(0.5);
        return Rod.of(from, to, radius);
    }

    /** All its bodies in the trailer's frame. */
    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(shape());
        more.forEach(box -> shapes.add(box.shape().moved(turn)));
        return shapes;
    }

    /** A unit vector of its own axes in the trailer's frame. */
    Vector3D toTrailer(Way own) {
        return turn.nominal().applyDirection(own.unit());
    }
}
