package org.spile.geometry.house;

import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Movements in use as readings of nothing with a tolerance: they never change what is drawn, only what is left at worst. */
final class InUse {
    private InUse() {}

    /** Up to so far one way (downwards, as a factor of +1 has it), never the other. */
    static Stack down(String path, double mm) {
        return movement(path, 0, mm);
    }

    /** Up to so far either way. */
    static Stack eitherWay(String path, double mm) {
        return movement(path, mm, mm);
    }

    /** Up to so far every way. */
    static Spot everyWay(String path, double mm) {
        return new Spot(
                eitherWay(path + " fore and aft", mm),
                eitherWay(path + " across", mm),
                eitherWay(path + " upright", mm));
    }

    private static Stack movement(String path, double plus, double minus) {
        return plus == 0 && minus == 0
                ? Stack.ZERO
                : Stack.of(new Reading(path, 0, plus, minus, Origin.TYPED, true, Kind.MOVEMENT, ""));
    }
}
