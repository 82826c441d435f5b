package org.spile.geometry.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Reading;

/** A house worked out, with a scene for each stance. */
final class HouseModel implements House {
    private final ToldHouse told;
    private final Materials materials;
    private final Map<String, Double> values;
    private final Map<String, Reading> used;
    private final Model model;
    private final Map<String, Scene> scenes = new LinkedHashMap<>();

    HouseModel(ToldHouse told, Materials materials, Map<String, Double> values, Readings readings, Model model) {
        this.told = told;
        this.materials = materials;
        this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        this.model = model;
        for (String stance : model.stances().ids()) {
            scenes.put(stance, SceneModel.of(model, stance));
        }
        this.used = readings.used();
    }

    @Override
    public ToldHouse told() {
        return told;
    }

    @Override
    public Materials materials() {
        return materials;
    }

    @Override
    public Reading now(Reading reading) {
        Double other = values.get(reading.path());
        return other == null ? reading : reading.withValue(other);
    }

    @Override
    public Map<String, Reading> readings() {
        return used;
    }

    @Override
    public List<String> stances() {
        return List.copyOf(scenes.keySet());
    }

    @Override
    public Scene scene(String stance) {
        Scene scene = scenes.get(stance);
        if (scene == null) {
            throw new IllegalArgumentException("no stance \"" + stance + "\", there is " + stances());
        }
        return scene;
    }

    @Override
    public Travels travels() {
        return new TravelsModel(model);
    }

    @Override
    public List<DuctRun> runs() {
        return model.runs();
    }

    @Override
    public List<MassPoint> masses() {
        return model.masses();
    }

    @Override
    public Resolved with(Map<String, Double> others) {
        for (String path : others.keySet()) {
            if (!used.containsKey(path)) {
                throw new IllegalArgumentException("no reading of the geometry has the path \"" + path + "\"");
            }
        }
        Map<String, Double> all = new LinkedHashMap<>(values);
        all.putAll(others);
        return HouseBuilder.build(told, all, model.ways());
    }

    @Override
    public Optional<FreeUnit> freed(String unit) {
        if (!told.units().containsKey(unit)) {
            throw new IllegalArgumentException(
                    "no unit \"" + unit + "\"; there are " + told.units().keySet());
        }
        return model.units().stream()
                .filter(place -> place.id().equals(unit) && hasPlace(place))
                .findFirst()
                .flatMap(this::freed);
    }

    /** What joins another has its place from there, and what sits in a duct from the duct. */
    private boolean hasPlace(UnitPlace place) {
        var placed = place.told().placed();
        boolean said = placed.in().isPresent() || !placed.at().isEmpty();
        boolean inDuct = told.runs().values().stream()
                        .flatMap(run -> run.stations().stream())
                        .anyMatch(station -> station.through().contains(place.id()))
                || told.lines().values().stream()
                        .flatMap(line -> line.stations().stream())
                        .anyMatch(station -> station.through().contains(place.id()));
        return place.told().joins().isEmpty() && (said || !inDuct);
    }

    private Optional<FreeUnit> freed(UnitPlace place) {
        Freed freed = new Freed(told, place);
        if (!(HouseBuilder.build(freed.house(), values, model.ways()) instanceof Resolved.Sound sound)) {
            return Optional.empty();
        }
        Readings again = new Readings(values, materials);
        RestingHeights heights = new RestingHeights(place, unsaid(place, again), again);
        return Optional.of(new FreeUnitModel(place, sound.house(), freed.leftOut(), heights));
    }

    /** What carries it stays where it is, so does the height on it. */
    private Asked.Unsaid unsaid(UnitPlace place, Readings again) {
        if (!place.told().standsOn().isEmpty()) {
            return Asked.Unsaid.standsOn(place.stood().own().z().low());
        }
        boolean cavity =
                model.spaces().cavities().containsKey(place.stood().in().id());
        return Units.hangsOrStands(place.told(), cavity, again);
    }
}
