package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.told.ToldMass;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Collects known loads: masses at their points, and whatever else says its mass, at the middle of its body. */
final class Masses {
    private final Spaces spaces;
    private final Readings readings;
    private final Troubles troubles;
    private final List<MassPoint> points = new ArrayList<>();

    Masses(Spaces spaces, Readings readings, Troubles troubles) {
        this.spaces = spaces;
        this.readings = readings;
        this.troubles = troubles;
    }

    List<MassPoint> points() {
        return points;
    }

    void add(ToldMass told) {
        Optional<Enclosure> in = spaces.of(told.placed(), false);
        if (in.isEmpty()) {
            return;
        }
        Map<Axis, Stack> point = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            point.put(axis, Stack.ZERO);
        }
        Asked asked = new Asked(
                told.placed().path(),
                told.placed().at(),
                point,
                EnumSet.allOf(Axis.class),
                Asked.ownWords(),
                in.get(),
                Unsaid.STANDS);
        Optional<Block> place = new Placing(readings, troubles).block(asked);
        Optional<Reading> mass = told.mass().or(told::holds);
        if (place.isPresent() && mass.isPresent()) {
            points.add(new MassPoint(
                    told.placed().path(),
                    in.get().trailer(),
                    place.get().middle().at(),
                    readings.now(mass.get()),
                    told.mass().isEmpty()));
        }
    }

    void add(Stood stood) {
        stood.placed()
                .mass()
                .ifPresent(mass -> points.add(new MassPoint(
                        stood.placed().path(),
                        stood.in().trailer(),
                        stood.shape().body().bounds().middle(),
                        readings.now(mass),
                        false)));
    }
}
