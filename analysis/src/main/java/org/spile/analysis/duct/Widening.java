package org.spile.analysis.duct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldSpigot;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The values of a house file that make a run so wide wherever it is narrower: its stations' widths and those of the openings
 * at its ends, which keep their middles.
 */
final class Widening {
    private final House house;
    private final DuctRun run;
    private final double wideMm;
    private final Map<String, Double> edits = new LinkedHashMap<>();

    Widening(House house, DuctRun run, double wideMm, double depthMm) {
        this.house = house;
        this.run = run;
        this.wideMm = wideMm;
        if (run.legs().stream().allMatch(leg -> flat(leg.start(), depthMm) && flat(leg.end(), depthMm))) {
            collect();
        }
    }

    /** Only runs that lie flat all along, at that depth, are widened by their width. */
    private static boolean flat(Section section, double depthMm) {
        return !(section instanceof Section.Round)
                && section.highMm() >= depthMm - 1e-6
                && section.wideMm() >= section.highMm();
    }

    /** By path, in mm; empty where the run isn't one that can be widened so. */
    Map<String, Double> edits() {
        return new LinkedHashMap<>(edits);
    }

    private void collect() {
        ToldRun told = house.told().runs().get(run.id());
        end(told.from(), run.legs().get(0).start());
        for (DuctLeg leg : run.legs()) {
            told.stations().stream()
                    .filter(station -> station.path().equals(leg.path()))
                    .findFirst()
                    .flatMap(ToldStation::section)
                    .flatMap(section -> section.wide())
                    .ifPresent(reading -> widen(reading, leg.end().wideMm(), List.of()));
        }
        end(told.to(), run.legs().get(run.legs().size() - 1).end());
    }

    private void end(ToldEnd end, Section section) {
        if (end.onRun()) {
            return;
        }
        ToldTerminal terminal = house.told().terminals().get(end.name());
        if (terminal != null) {
            terminal.placed()
                    .sizes()
                    .wideMm()
                    .ifPresent(reading ->
                            widen(reading, section.wideMm(), terminal.placed().at()));
        }
        spigot(end.name())
                .ifPresent(spigot ->
                        spigot.sizes().wideMm().ifPresent(reading -> widen(reading, section.wideMm(), spigot.at())));
    }

    private Optional<ToldSpigot> spigot(String name) {
        String[] words = name.split("\\.", 2);
        ToldUnit unit = house.told().units().get(words[0]);
        return words.length < 2 || unit == null
                ? Optional.empty()
                : Optional.ofNullable(unit.spigots().get(words[1]));
    }

    private void widen(Reading told, double clearMm, List<FaceDistance> places) {
        double more = wideMm - clearMm;
        if (more <= 0) {
            return;
        }
        edits.put(told.path(), house.now(told).value() + more);
        for (FaceDistance place : places) {
            boolean across = place.face().equals("left") || place.face().equals("right");
            if (across && place.far().isEmpty() && !place.out()) {
                edits.put(place.near().path(), house.now(place.near()).value() - more / 2);
            }
        }
    }
}
