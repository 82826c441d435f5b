package org.spile.analysis.whole;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.House;
import org.spile.geometry.house.MassPoint;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.RestingPlace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Reading;

/** A house of which only some stances are looked at; a what-if of it looks at the same ones. */
public final class SomeStances implements House {
    private final House house;
    private final List<String> stances;

    private SomeStances(House house, List<String> stances) {
        this.house = house;
        this.stances = stances;
    }

    /**
     * Looks at some stances only, in the house's order.
     *
     * @throws IllegalArgumentException for a stance the house doesn't have, or for none at all
     */
    public static House of(House house, List<String> wanted) {
        for (String stance : wanted) {
            if (!house.stances().contains(stance)) {
                throw new IllegalArgumentException("no stance \"" + stance + "\"; there are " + house.stances());
            }
        }
        if (wanted.isEmpty()) {
            throw new IllegalArgumentException("at least one stance must be looked at");
        }
        return new SomeStances(
                house, house.stances().stream().filter(wanted::contains).toList());
    }

    @Override
    public ToldHouse told() {
        return house.told();
    }

    @Override
    public Materials materials() {
        return house.materials();
    }

    @Override
    public Reading now(Reading told) {
        return house.now(told);
    }

    @Override
    public Map<String, Reading> readings() {
        return house.readings();
    }

    @Override
    public List<MassPoint> masses() {
        return house.masses();
    }

    @Override
    public List<String> stances() {
        return stances;
    }

    @Override
    public Scene scene(String stance) {
        if (!stances.contains(stance)) {
            throw new IllegalArgumentException("stance \"" + stance + "\" isn't looked at; these are: " + stances);
        }
        return house.scene(stance);
    }

    @Override
    public Travels travels() {
        return house.travels();
    }

    @Override
    public List<DuctRun> runs() {
        return house.runs();
    }

    @Override
    public Resolved with(Map<String, Double> values) {
        Resolved changed = house.with(values);
        return changed instanceof Resolved.Sound sound
                ? new Resolved.Sound(new SomeStances(sound.house(), stances))
                : changed;
    }

    @Override
    public Optional<FreeUnit> freed(String unit) {
        return house.freed(unit).map(free -> new InSomeStances(free, new SomeStances(free.house(), stances)));
    }

    /** A freed unit of a house in some stances. */
    private record InSomeStances(FreeUnit free, House house) implements FreeUnit {
        @Override
        public String id() {
            return free.id();
        }

        @Override
        public List<String> leftOut() {
            return free.leftOut();
        }

        @Override
        public String trailer() {
            return free.trailer();
        }

        @Override
        public String in() {
            return free.in();
        }

        @Override
        public Vector3D place() {
            return free.place();
        }

        @Override
        public double yawDeg() {
            return free.yawDeg();
        }

        @Override
        public Optional<List<RestingPlace>> resting(
                double minX, double minY, double maxX, double maxY, double alongXMm, double alongYMm) {
            return free.resting(minX, minY, maxX, maxY, alongXMm, alongYMm);
        }
    }
}
