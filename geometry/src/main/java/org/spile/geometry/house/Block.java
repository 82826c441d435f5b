package org.spile.geometry.house;

import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Loft;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.kernel.measure.Stack;

/** A box along the axes of a frame, each face with what it rests on (mm). */
record Block(Span x, Span y, Span z) {
    /** A box round the origin. */
    static Block round(Stack along, Stack across, Stack up) {
        return new Block(Span.round(Stack.ZERO, along), Span.round(Stack.ZERO, across), Span.round(Stack.ZERO, up));
    }

    Span get(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    Block with(Axis axis, Span span) {
        return switch (axis) {
            case X -> new Block(span, y, z);
            case Y -> new Block(x, span, z);
            case Z -> new Block(x, y, span);
        };
    }

    Spot middle() {
        return new Spot(x.middle(), y.middle(), z.middle());
    }

    Shape shape() {
        return Loft.box(x, y, z);
    }

    Block lifted(Stack by) {
        return with(Axis.Z, new Span(z.low().plus(by), z.high().plus(by)));
    }

    /** Every face further out by a thickness. */
    Block wrapped(Stack thick) {
        return new Block(wrapped(x, thick), wrapped(y, thick), wrapped(z, thick));
    }

    private static Span wrapped(Span span, Stack thick) {
        return new Span(span.low().minus(thick), span.high().plus(thick));
    }
}
