package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.material.BeamSag;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.material.Movement;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * How far things move in use: fixtures that carry sag, what is made of a known material grows with heat and damp, units shift
 * on the road.
 *
 * <p>Each has its own name in a stack. A sag that nobody typed is reckoned for fixtures that span freely: under their own
 * weight and their share of the units they carry, as if those hung in the middle.
 */
final class Moved {
    /** Standard gravity (m/s2), ISO 80000-3. */
    private static final double G = 9.80665;

    private static final double CUBIC_MM_PER_M3 = 1e9;
    private static final double PA_PER_MPA = 1e6;

    private final ToldHouse told;
    private final Materials materials;
    private final Readings readings;
    private final Map<String, Stack> sags = new LinkedHashMap<>();

    Moved(ToldHouse told, Materials materials, Readings readings) {
        this.told = told;
        this.materials = materials;
        this.readings = readings;
    }

    /** How far a fixture hangs lower in use; of other things nothing. */
    Stack sag(String id) {
        ToldFixture fixture = told.fixtures().get(id);
        return fixture == null ? Stack.ZERO : sags.computeIfAbsent(id, key -> sag(fixture));
    }

    private Stack sag(ToldFixture fixture) {
        String path = fixture.placed().path() + ".sag";
        return fixture.sag()
                .map(typed -> InUse.down(path, readings.now(typed).value()))
                .orElseGet(() -> InUse.down(path, reckonedMm(fixture)));
    }

    private double reckonedMm(ToldFixture fixture) {
        Optional<Material> material = materials.named(fixture.of());
        Optional<Reading> stiff = material.map(Material::movement).flatMap(Movement::stiff);
        Optional<Double> second = secondMm4(fixture);
        if (fixture.spans().isEmpty() || stiff.isEmpty() || second.isEmpty()) {
            return 0;
        }
        double span = now(fixture.spans().get());
        double mpa = now(stiff.get()) / PA_PER_MPA;
        double carried = told.units().values().stream()
                .mapToDouble(unit -> shareKg(unit, fixture.placed().id()))
                .sum();
        double own =
                material.flatMap(Material::density).map(this::now).orElse(0.0) * areaMm2(fixture) / CUBIC_MM_PER_M3;
        return BeamSag.underMidLoadMm(carried * G, span, mpa, second.get())
                + BeamSag.underEvenLoadMm(own * G, span, mpa, second.get());
    }

    private double shareKg(ToldUnit unit, String id) {
        int carriers = unit.hungFrom().size() + unit.standsOn().size();
        boolean here = unit.hungFrom().contains(id) || unit.standsOn().contains(id);
        return here ? unit.placed().mass().map(this::now).orElse(0.0) / carriers : 0;
    }

    /** Its upright height counts, and the smaller of its level sides, across the span. */
    private Optional<Double> secondMm4(ToldFixture fixture) {
        var sizes = fixture.placed().sizes();
        if (sizes.roundMm().isPresent()) {
            return sizes.roundMm().map(this::now).map(BeamSag::roundMm4);
        }
        return across(fixture).flatMap(wide -> sizes.highMm().map(high -> BeamSag.rectangleMm4(wide, now(high))));
    }

    private double areaMm2(ToldFixture fixture) {
        var sizes = fixture.placed().sizes();
        return sizes.roundMm()
                .map(this::now)
                .map(round -> Math.PI * round * round / 4)
                .or(() -> across(fixture).flatMap(wide -> sizes.highMm().map(high -> wide * now(high))))
                .orElse(0.0);
    }

    private Optional<Double> across(ToldFixture fixture) {
        var sizes = fixture.placed().sizes();
        return sizes.longMm().flatMap(one -> sizes.wideMm().map(other -> Math.min(now(one), now(other))));
    }

    /** How much a size of a thing made of a material grows or shrinks. */
    Map<Axis, Stack> growth(String path, String of, Map<Axis, Stack> sizes) {
        Map<Axis, Stack> growth = new EnumMap<>(Axis.class);
        Movement movement = materials.named(of).map(Material::movement).orElse(Movement.UNKNOWN);
        Axis grain = grain(sizes);
        sizes.forEach((axis, size) -> {
            double mm = size.valueMm();
            Stack heat = InUse.eitherWay(path + "." + axis.size() + " with heat", mm * warm(movement));
            Stack damp = axis == grain
                    ? Stack.ZERO
                    : InUse.eitherWay(path + "." + axis.size() + " with damp", mm * readings.swell(movement));
            growth.put(axis, heat.plus(damp));
        });
        return growth;
    }

    /** Wood grows across its grain, and the grain runs along its longest side. */
    private static Axis grain(Map<Axis, Stack> sizes) {
        Axis longest = Axis.X;
        for (Map.Entry<Axis, Stack> entry : sizes.entrySet()) {
            boolean longer = !sizes.containsKey(longest)
                    || entry.getValue().valueMm() > sizes.get(longest).valueMm();
            longest = longer ? entry.getKey() : longest;
        }
        return longest;
    }

    private double warm(Movement movement) {
        double by = told.limits().warms().map(this::now).orElse(0.0);
        return by * movement.grows().map(this::now).orElse(0.0);
    }

    /** How far a unit and what joins it shift on the road, by the paths of their things. */
    Map<String, Spot> sways() {
        Map<String, Spot> sways = new LinkedHashMap<>();
        double mm = told.limits().sways().map(this::now).orElse(0.0);
        if (mm > 0) {
            for (ToldUnit unit : told.units().values()) {
                String path = unit.placed().path();
                sways.put(path, InUse.everyWay("limits.sways of " + host(unit), mm));
            }
        }
        return sways;
    }

    /** What a box joins, or that joins: they shift as one. */
    private String host(ToldUnit unit) {
        ToldUnit at = unit;
        for (int i = 0; i < told.units().size() && !at.joins().isEmpty(); i++) {
            ToldUnit next = told.units().get(Units.hostOf(at));
            if (next == null) {
                break;
            }
            at = next;
        }
        return at.placed().path();
    }

    private double now(Reading reading) {
        return readings.now(reading).value();
    }
}
