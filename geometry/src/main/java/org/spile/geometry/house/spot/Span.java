package org.spile.geometry.house.spot;

import org.spile.geometry.kernel.measure.Stack;

/**
 * From a low to a high coordinate along an axis (mm).
 *
 * @param low coordinate
 * @param high coordinate
 */
public record Span(Stack low, Stack high) {
    /** Round a middle. */
    public static Span round(Stack middle, Stack size) {
        Stack half = size.times(0.5);
        return new Span(middle.minus(half), middle.plus(half));
    }

    /** A single place. */
    public static Span at(Stack place) {
        return new Span(place, place);
    }

    /** Its length. */
    public Stack size() {
        return high.minus(low);
    }

    /** Its middle. */
    public Stack middle() {
        return low.plus(high).times(0.5);
    }

    /** The end on that side. */
    public Stack end(Way way) {
        return way.sign() > 0 ? high : low;
    }

    /** Both ends further out (mm, negative inwards). */
    public Span grown(double mm) {
        return new Span(low.minus(mm), high.plus(mm));
    }

    /** Whether it shares a length, or holds a single place, with another; touching ends don't count. */
    public boolean meets(Span other) {
        boolean point = low.valueMm() == high.valueMm() || other.low.valueMm() == other.high.valueMm();
        double gap = Math.max(low.valueMm(), other.low.valueMm()) - Math.min(high.valueMm(), other.high.valueMm());
        return point ? gap <= 0 : gap < 0;
    }

    /** Whether the other lies within it. */
    public boolean covers(Span other) {
        return low.valueMm() <= other.low.valueMm() && other.high.valueMm() <= high.valueMm();
    }

    /** Whether it has a positive length. */
    public boolean positive() {
        return high.valueMm() > low.valueMm();
    }
}
