package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Stack;

/**
 * What a path looks like that parts with its trailers: legs after the piece that comes out belong to the other trailer.
 *
 * <p>Those are laid from their end backwards, in that trailer's own frame, so that they move with it; a length that says
 * {@code rest} reaches to where the piece ends. The piece itself takes up whatever the docking is off.
 */
final class Parting {
    private final Rigid otherToRun;
    private final Target target;
    private final Troubles troubles;

    Parting(Rigid otherToRun, Target target, Troubles troubles) {
        this.otherToRun = otherToRun;
        this.target = target;
        this.troubles = troubles;
    }

    /** The legs, each in the frame of its trailer; nothing, and a trouble, if the joint can't part. */
    Optional<List<Leg>> parted(List<Leg> legs) {
        int p = 0;
        while (p < legs.size() && !legs.get(p).comesOut()) {
            p++;
        }
        Leg piece = legs.get(p);
        if (p + 1 < legs.size() && legs.get(p + 1).way() != piece.way()) {
            troubles.wrong(
                    legs.get(p + 1).path(),
                    "the path turns right at the joint",
                    "Let it go straight on from " + piece.station().parts() + ", and turn later.");
            return Optional.empty();
        }
        Rigid back = otherToRun.inverse();
        List<Leg> parted = new ArrayList<>(legs.subList(0, p));
        List<Leg> others = new ArrayList<>();
        Spot end = target instanceof Target.AtOpening at
                ? at.own().centre()
                : back.apply(legs.get(legs.size() - 1).to());
        for (int i = legs.size() - 1; i > p; i--) {
            Leg leg = own(legs.get(i), back, end);
            others.add(0, leg);
            end = leg.from();
        }
        parted.add(piece.with(piece.from(), otherToRun.apply(end)));
        parted.addAll(others);
        return Optional.of(parted);
    }

    /** A leg in the other trailer's frame, ending at a spot. */
    private Leg own(Leg leg, Rigid back, Spot end) {
        Spot start = back.apply(leg.from());
        Spot nominalEnd = back.apply(leg.to());
        Spot from = end;
        for (Axis axis : Axis.values()) {
            Axis mine = mapped(axis, back);
            double sign = Math.signum(mine.of(back.nominal().applyDirection(axis.unit())));
            if (leg.typed().contains(axis)) {
                Stack along = leg.to().minus(leg.from()).get(axis).times(sign);
                from = from.with(mine, end.get(mine).minus(along));
            } else if (rests(leg.station(), axis)) {
                from = from.with(mine, start.get(mine));
            } else {
                double shift = nominalEnd.minus(start).get(mine).valueMm();
                from = from.with(mine, end.get(mine).minus(Math.abs(shift) > 0.5 ? shift : 0));
            }
        }
        Way way = Way.nearest(back.nominal().applyDirection(leg.way().unit()));
        return new Leg(
                leg.station(),
                target.trailer(),
                way,
                from,
                end,
                mapped(leg.start(), back),
                mapped(leg.end(), back),
                leg.bend(),
                leg.flush().map(side -> Way.nearest(back.nominal().applyDirection(side.unit()))),
                leg.typed());
    }

    private static boolean rests(ToldStation station, Axis axis) {
        return station.ways().entrySet().stream()
                .anyMatch(entry -> entry.getValue().isEmpty()
                        && Way.named(entry.getKey())
                                .filter(w -> w.axis() == axis)
                                .isPresent());
    }

    private static Axis mapped(Axis axis, Rigid back) {
        Vector3D own = back.nominal().applyDirection(axis.unit());
        return Axis.nearest(own);
    }

    private static Cross mapped(Cross cross, Rigid back) {
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        cross.sizes().forEach((axis, size) -> sizes.put(mapped(axis, back), size));
        return new Cross(mapped(cross.main(), back), sizes, cross.form());
    }
}
