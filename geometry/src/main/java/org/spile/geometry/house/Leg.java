package org.spile.geometry.house;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.Vanes;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Stack;

/**
 * One leg worked out, corner to corner on its middle line.
 *
 * <p>A leg lies along the axis it goes farthest along; its sections are square to that axis, also where it slants, so that a
 * slanted leg is sheared and not turned.
 *
 * @param trailer in whose frame it is
 * @param way it mainly goes
 * @param start clear section at its start
 * @param end clear section at its end
 * @param bend radius of the corner before it; absent if that is mitred or there is none
 * @param flush the side of the leg, in its trailer's frame, that a change of section keeps
 * @param typed the axes along which its length was typed
 */
record Leg(
        ToldStation station,
        String trailer,
        Way way,
        Spot from,
        Spot to,
        Cross start,
        Cross end,
        Optional<Stack> bend,
        Optional<Way> flush,
        Set<Axis> typed) {
    Leg {
        typed = typed.isEmpty() ? EnumSet.noneOf(Axis.class) : EnumSet.copyOf(typed);
    }

    String path() {
        return station.path();
    }

    boolean comesOut() {
        return !station.parts().isEmpty();
    }

    Leg with(Spot otherFrom, Spot otherTo) {
        return new Leg(station, trailer, way, otherFrom, otherTo, start, end, bend, flush, typed);
    }

    /** How far it goes along its own axis, nominal (mm). */
    double alongMm() {
        return way.sign() * to.minus(from).get(way.axis()).valueMm();
    }

    DuctLeg told(double wallMm, Vanes vanes) {
        return new DuctLeg(
                path(),
                trailer,
                way.unit(),
                from.at(),
                to.at(),
                start.section(),
                end.section(),
                wallMm,
                flush.map(Way::face).orElse(""),
                station.through(),
                station.parts(),
                bend.map(Stack::valueMm),
                vanes,
                start.sides(),
                end.sides());
    }
}
