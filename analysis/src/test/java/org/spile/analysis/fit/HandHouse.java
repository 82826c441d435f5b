package org.spile.analysis.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.spile.analysis.finding.NothingMoves;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.House;
import org.spile.geometry.house.MassPoint;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Reading;

/** A house of a few boxes, laid out by hand from readings, so that its gaps can be reckoned on paper. */
final class HandHouse implements House {
    private final ToldHouse told;
    private final BiConsumer<HandScene, Tape> plan;
    private final Map<String, Double> changes;
    private final Tape tape;
    private final HandScene scene;

    private HandHouse(ToldHouse told, BiConsumer<HandScene, Tape> plan, Map<String, Double> changes) {
        this.told = told;
        this.plan = plan;
        this.changes = changes;
        this.tape = new Tape(changes);
        this.scene = new HandScene(AS_BUILT);
        plan.accept(scene, tape);
    }

    static HandHouse of(ToldHouse told, BiConsumer<HandScene, Tape> plan) {
        return new HandHouse(told, plan, Map.of());
    }

    @Override
    public ToldHouse told() {
        return told;
    }

    @Override
    public Materials materials() {
        return Materials.shipped();
    }

    @Override
    public Reading now(Reading reading) {
        return tape.now(reading);
    }

    @Override
    public Map<String, Reading> readings() {
        return tape.readings();
    }

    @Override
    public List<String> stances() {
        return List.of(AS_BUILT);
    }

    @Override
    public Scene scene(String stance) {
        return scene;
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
        Map<String, Double> all = new HashMap<>(changes);
        all.putAll(values);
        return new Resolved.Sound(new HandHouse(told, plan, all));
    }

    @Override
    public Optional<FreeUnit> freed(String unit) {
        return Optional.empty();
    }
}
