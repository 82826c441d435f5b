package org.spile.geometry.house.duct;

import org.spile.geometry.kernel.measure.Stack;

/**
 * The clear sides of a section with the readings they rest on, walls among them where sections are typed over the wall.
 *
 * @param wide overall level side; across, on an upright leg
 * @param high overall upright side; fore and aft, on an upright leg
 */
public record Sides(Stack wide, Stack high) {
    /** Sides that rest on no reading (mm). */
    public static Sides of(Section section) {
        return new Sides(Stack.constant(section.wideMm()), Stack.constant(section.highMm()));
    }

    /** Those at a share of the way to others. */
    public Sides toward(Sides other, double share) {
        return new Sides(
                wide.times(1 - share).plus(other.wide.times(share)),
                high.times(1 - share).plus(other.high.times(share)));
    }
}
