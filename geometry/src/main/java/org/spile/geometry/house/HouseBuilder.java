package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.house.told.ToldHouse;

/** Works a told house out, step by step: spaces, what stands in them, units, terminals, runs, lines, scenes. */
final class HouseBuilder {
    private final ToldHouse told;
    private final Materials materials;
    private final Map<String, Double> values;
    private final Names names;
    private final Troubles troubles;
    private final Readings readings;

    private HouseBuilder(ToldHouse told, Map<String, Double> values) {
        this.told = told;
        this.values = values;
        this.materials = Materials.shipped().with(told.materials().values());
        this.names = new Names(told);
        this.troubles = new Troubles(names.order());
        this.readings = new Readings(values, materials);
    }

    static Resolved build(ToldHouse told, Map<String, Double> values) {
        return new HouseBuilder(told, values).resolved();
    }

    private Resolved resolved() {
        names.report(troubles);
        Spaces spaces = new Spaces(told, names, readings, troubles);
        Docking docking = new Docking(spaces.trailers(), names, readings, troubles);
        Movers movers = new Movers(told, spaces, names, readings, troubles);
        Stances stances = new Stances(told, readings);
        stances.check(movers.places(), docking, names, troubles);
        Carriers carriers = carriers();
        Map<String, Stood> fixtures = fixtures(spaces, carriers);
        movers.places().forEach((id, place) -> carriers.add(id, place.stood()));
        Units units = new Units(told.units(), devices(), spaces, carriers, names, readings, troubles);
        List<UnitPlace> placed = units.all();
        List<Piece> pieces = new ArrayList<>();
        spaces.trailers().values().forEach(trailer -> pieces.addAll(new Shells(readings, trailer).pieces()));
        spaces.cavities().values().forEach(cavity -> pieces.addAll(new Linings(cavity).pieces()));
        Whereabouts whereabouts = new Whereabouts(spaces);
        fixtures.forEach((id, stood) -> pieces.addAll(whereabouts.pieces(stood, PartKind.FIXTURE)));
        pieces.addAll(movers.pieces());
        List<Opening> openings = new ArrayList<>();
        for (UnitPlace unit : placed) {
            pieces.addAll(unit.pieces(whereabouts.spaces(unit.stood())));
            openings.addAll(unit.openings().values());
        }
        if (!troubles.none()) {
            return new Resolved.Wrong(troubles.inOrder());
        }
        Model model = new Model(
                spaces, docking, stances, movers.places(), placed, openings, pieces, List.of(), List.of(), new Ties());
        return new Resolved.Sound(new HouseModel(told, materials, values, readings, model));
    }

    private Carriers carriers() {
        Set<String> ids = new LinkedHashSet<>(told.fixtures().keySet());
        ids.addAll(told.movers().keySet());
        ids.addAll(told.units().keySet());
        return new Carriers(ids, names, troubles);
    }

    private Map<String, Stood> fixtures(Spaces spaces, Carriers carriers) {
        Map<String, Stood> stood = new LinkedHashMap<>();
        for (Map.Entry<String, ToldFixture> entry : told.fixtures().entrySet()) {
            Optional<Stood> thing = spaces.of(entry.getValue().placed(), false)
                    .flatMap(in -> new Standing(readings, troubles)
                            .stand(entry.getValue().placed(), in, Unsaid.STANDS));
            thing.ifPresent(there -> {
                stood.put(entry.getKey(), there);
                carriers.add(entry.getKey(), there);
            });
        }
        return stood;
    }

    /** Ids that some leg names as sitting in it. */
    private Set<String> devices() {
        Set<String> devices = new LinkedHashSet<>();
        told.runs().values().forEach(run -> run.stations().forEach(station -> devices.addAll(station.through())));
        told.lines().values().forEach(line -> line.stations().forEach(station -> devices.addAll(station.through())));
        return devices;
    }
}
