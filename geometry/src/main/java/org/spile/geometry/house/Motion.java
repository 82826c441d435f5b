package org.spile.geometry.house;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.clearance.Hinge;
import org.spile.geometry.kernel.clearance.Travel;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Move;

/** How a mover moves from where it is placed, in the frame of its trailer. */
sealed interface Motion {
    /** The position of the wide open mover (mm or deg). */
    Stack full();

    /** The motion to a position. */
    Rigid to(Stack position);

    /** The same as a travel with every reading at its value, in another frame. */
    Travel travel(Move frame);

    /** Unit of a position, for what is said about it. */
    String unit();

    /**
     * A hinge.
     *
     * @param pin a point of its pin
     * @param axis unit vector along the pin, so that a positive turn opens
     * @param full how far it opens (deg)
     */
    record Swing(Spot pin, Vector3D axis, Stack full) implements Motion {
        @Override
        public Rigid to(Stack position) {
            return Rigid.turn(pin, axis, position);
        }

        @Override
        public Travel travel(Move frame) {
            return new Hinge(frame.apply(pin.at()), frame.applyDirection(axis).normalize());
        }

        @Override
        public String unit() {
            return "deg";
        }
    }

    /** One straight piece of a slide. */
    record Leg(Way way, Stack travel) {}

    /**
     * A slide, one straight piece after the other.
     *
     * @param legs in the order they are travelled
     */
    record Slide(List<Leg> legs) implements Motion {
        public Slide {
            legs = List.copyOf(legs);
        }

        @Override
        public Stack full() {
            return legs.stream().map(Leg::travel).reduce(Stack.ZERO, Stack::plus);
        }

        @Override
        public Rigid to(Stack position) {
            Spot by = Spot.ORIGIN;
            Stack left = position;
            for (Leg leg : legs) {
                Stack here = FirstOrder.lesser(left, leg.travel());
                by = by.plus(leg.way().unit(), here);
                left = left.minus(here);
            }
            return Rigid.shift(by);
        }

        @Override
        public Travel travel(Move frame) {
            return new org.spile.geometry.kernel.clearance.Slide(legs.stream()
                    .map(leg -> new org.spile.geometry.kernel.clearance.Slide.Leg(
                            frame.applyDirection(leg.way().unit()).normalize(),
                            Math.max(0, leg.travel().valueMm())))
                    .toList());
        }

        @Override
        public String unit() {
            return "mm";
        }
    }
}
