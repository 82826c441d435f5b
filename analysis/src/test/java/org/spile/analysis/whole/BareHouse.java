package org.spile.analysis.whole;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.NothingMoves;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.House;
import org.spile.geometry.house.MassPoint;
import org.spile.geometry.house.Mouth;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Tie;
import org.spile.geometry.house.Travels;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldClimate;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldLimits;
import org.spile.geometry.house.told.ToldProject;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;

/** A house with nothing in its scenes, three stances, and whatever it was told. */
record BareHouse(ToldHouse told) implements House {
    @Override
    public Materials materials() {
        return Materials.shipped();
    }

    @Override
    public Reading now(Reading reading) {
        return reading;
    }

    @Override
    public Map<String, Reading> readings() {
        return Map.of();
    }

    @Override
    public List<String> stances() {
        return List.of("parked", "shaded", "on-the-road");
    }

    @Override
    public Scene scene(String stance) {
        return new Empty(stance);
    }

    @Override
    public Travels travels() {
        return new NothingMoves(this::scene);
    }

    @Override
    public List<DuctRun> runs() {
        return List.of();
    }

    @Override
    public List<MassPoint> masses() {
        return List.of();
    }

    @Override
    public Resolved with(Map<String, Double> values) {
        return new Resolved.Sound(this);
    }

    @Override
    public Optional<FreeUnit> freed(String unit) {
        return Optional.empty();
    }

    static ToldHouse told(
            Map<String, ToldTrailer> trailers, Map<String, ToldUnit> units, Optional<ToldClimate> climate) {
        ToldLimits limits = ToldLimits.only(Optional.empty());
        return new ToldHouse(
                "bare",
                new ToldProject("", "", ""),
                trailers,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                units,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                climate,
                limits,
                Map.of(),
                Map.of(),
                Map.of());
    }

    static Map<String, ToldUnit> units(String... ids) {
        Map<String, ToldUnit> units = new LinkedHashMap<>();
        for (String id : ids) {
            units.put(
                    id,
                    new ToldUnit(
                            placed("units." + id, id),
                            "forward",
                            List.of(),
                            List.of(),
                            "",
                            List.of(),
                            0,
                            Optional.empty(),
                            Map.of(),
                            Map.of(),
                            Map.of(),
                            Map.of(),
                            Map.of(),
                            Optional.empty(),
                            Optional.empty()));
        }
        return units;
    }

    static Map<String, ToldTrailer> trailers(String... ids) {
        Map<String, ToldTrailer> trailers = new LinkedHashMap<>();
        for (String id : ids) {
            trailers.put(
                    id,
                    new ToldTrailer(
                            placed("trailers." + id, id),
                            Optional.empty(),
                            Optional.empty(),
                            List.of(),
                            List.of(),
                            List.of(),
                            Optional.empty(),
                            Optional.empty(),
                            List.of()));
        }
        return trailers;
    }

    private static Placed placed(String path, String id) {
        return new Placed(
                path,
                id,
                id,
                Optional.empty(),
                List.of(),
                ToldSizes.none(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    private record Empty(String stance) implements Scene {
        @Override
        public boolean road() {
            return false;
        }

        @Override
        public List<Part> parts() {
            return List.of();
        }

        @Override
        public Optional<Part> part(String id) {
            return Optional.empty();
        }

        @Override
        public List<CavitySpace> cavities() {
            return List.of();
        }

        @Override
        public List<RoomSpace> rooms() {
            return List.of();
        }

        @Override
        public List<Mouth> mouths() {
            return List.of();
        }

        @Override
        public List<TrailerPlace> trailers() {
            return List.of();
        }

        @Override
        public Optional<Tie> tie(Part one, Part other) {
            return Optional.empty();
        }

        @Override
        public Optional<Vector3D> outward(String unit, String face) {
            return Optional.empty();
        }
    }
}
