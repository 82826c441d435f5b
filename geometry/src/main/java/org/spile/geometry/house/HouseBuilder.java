package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Stack;

/** Works a told house out, step by step: spaces, what stands in them, units, terminals, runs, lines, scenes. */
final class HouseBuilder {
    private final ToldHouse told;
    private final Materials materials;
    private final Map<String, Double> values;
    private final Names names;
    private final Troubles troubles;
    private final Readings readings;
    private final Moved moved;

    private final List<Pathway> before;

    private HouseBuilder(ToldHouse told, Map<String, Double> values, List<Pathway> before) {
        this.told = told;
        this.before = before;
        this.values = values;
        this.materials = Materials.shipped().with(told.materials().values());
        this.names = new Names(told);
        this.troubles = new Troubles(names.order());
        this.readings = new Readings(values, materials, told.limits().damps());
        this.moved = new Moved(told, materials, readings);
    }

    /**
     * The house, or what is wrong with it.
     *
     * @param values what readings are instead, by path
     * @param before runs and lines as they were worked out before, with other values; may be none
     */
    static Resolved build(ToldHouse told, Map<String, Double> values, List<Pathway> before) {
        return new HouseBuilder(told, values, before).resolved();
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
        Set<String> inDucts = inDucts();
        Units units = new Units(told.units(), inDucts, spaces, carriers, names, moved, readings, troubles);
        Terminals terminals = new Terminals(told.terminals(), inDucts, spaces, readings, troubles);
        List<UnitPlace> placed = units.all();
        Paths paths = new Paths(told, spaces, docking, units, terminals, fixtures, names, readings, before, troubles);
        List<Pathway> ways = paths.all();
        Devices devices = new Devices(ways, units, terminals, spaces, names, readings, troubles);
        List<UnitPlace> all = inOrder(placed, devices);
        Masses masses = masses(spaces, fixtures, movers, all);
        if (!troubles.none()) {
            return new Resolved.Wrong(troubles.inOrder());
        }
        Things things = new Things(told, spaces, fixtures, movers, all, terminals, ways, devices, readings, names);
        Model model = new Model(
                spaces,
                decks(spaces),
                docking,
                stances,
                movers.places(),
                all,
                things.openings(),
                things.pieces(),
                ways,
                runs(ways),
                masses.points(),
                things.ties(),
                moved.sways());
        return new Resolved.Sound(new HouseModel(told, materials, values, readings, model));
    }

    private Map<String, Travels.Deck> decks(Spaces spaces) {
        Map<String, Travels.Deck> decks = new LinkedHashMap<>();
        for (Trailer trailer : spaces.trailers().values()) {
            Optional<ToldTrailer> as = trailer.told();
            Stack front = trailer.edge(Way.FORWARD);
            decks.put(
                    trailer.id(),
                    new Travels.Deck(
                            trailer.edge(Way.AFT),
                            front,
                            trailer.edge(Way.RIGHT),
                            trailer.edge(Way.LEFT),
                            as.flatMap(ToldTrailer::ground)
                                    .map(ground -> readings.of(ground).times(-1)),
                            as.flatMap(trailerTold -> trailerTold.coupling().stream()
                                    .filter(distance -> distance.face().equals("front"))
                                    .findFirst()
                                    .map(distance -> distance.out()
                                            ? front.plus(readings.of(distance.near()))
                                            : front.minus(readings.of(distance.near()))))));
        }
        return decks;
    }

    /** Units in the order of the file, those in ducts among them. */
    private List<UnitPlace> inOrder(List<UnitPlace> placed, Devices devices) {
        Map<String, UnitPlace> byId = new LinkedHashMap<>();
        placed.forEach(unit -> byId.put(unit.id(), unit));
        devices.places().forEach(unit -> byId.put(unit.id(), unit));
        List<UnitPlace> all = new ArrayList<>();
        for (String id : told.units().keySet()) {
            if (byId.containsKey(id)) {
                all.add(byId.get(id));
            }
        }
        return all;
    }

    private List<DuctRun> runs(List<Pathway> ways) {
        List<DuctRun> runs = new ArrayList<>();
        Map<String, Double> walls = new LinkedHashMap<>();
        ways.forEach(way -> walls.put(way.course().id(), way.wall().valueMm()));
        for (Pathway way : ways) {
            if (way.course().duct()) {
                runs.add(way.told(told.runs().get(way.course().id()), readings, walls));
            }
        }
        return runs;
    }

    private Masses masses(Spaces spaces, Map<String, Stood> fixtures, Movers movers, List<UnitPlace> units) {
        Masses masses = new Masses(spaces, readings, troubles);
        told.masses().values().forEach(masses::add);
        fixtures.values().forEach(masses::add);
        movers.places().values().forEach(place -> masses.add(place.stood()));
        units.forEach(unit -> masses.add(unit.stood()));
        return masses;
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
                            .of(entry.getValue().of(), moved)
                            .stand(entry.getValue().placed(), in, Unsaid.STANDS));
            thing.map(there -> there.lifted(moved.sag(entry.getKey()))).ifPresent(there -> {
                stood.put(entry.getKey(), there);
                carriers.add(entry.getKey(), there);
            });
        }
        return stood;
    }

    /** Ids that some leg names as sitting in it. */
    private Set<String> inDucts() {
        Set<String> devices = new LinkedHashSet<>();
        told.runs().values().forEach(run -> run.stations().forEach(station -> devices.addAll(station.through())));
        told.lines().values().forEach(line -> line.stations().forEach(station -> devices.addAll(station.through())));
        return devices;
    }
}
