package org.spile.analysis.duct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldSpigot;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The values of a house file that make a flat run so wide wherever it is narrower: the long sides of its stations and of the
 * openings at its ends, which keep their middles. The long side is the level one of a run that lies flat, the upright one of
 * a run that stands on edge.
 */
final class Widening {
    private static final Set<String> LEVEL = Set.of("left", "right");
    private static final Set<String> UPRIGHT = Set.of("floor", "ceiling", "top", "bottom");

    private final House house;
    private final DuctRun run;
    private final double wideMm;
    private final boolean onEdge;
    private final Map<String, Double> edits = new LinkedHashMap<>();

    Widening(House house, DuctRun run, double wideMm, double depthMm) {
        this.house = house;
        this.run = run;
        this.wideMm = wideMm;
        Section first = run.legs().get(0).start();
        this.onEdge = first.highMm() > first.wideMm();
        if (run.legs().stream().allMatch(leg -> flat(leg.start(), depthMm) && flat(leg.end(), depthMm))) {
            collect();
        }
    }

    /** Only runs whose long side is the same all along, at that depth, are widened by it. */
    private boolean flat(Section section, double depthMm) {
        double deep = onEdge ? section.wideMm() : section.highMm();
        return !(section instanceof Section.Round) && deep >= depthMm - 1e-6 && longMm(section) >= deep;
    }

    private double longMm(Section section) {
        return onEdge ? section.highMm() : section.wideMm();
    }

    /** What its long side is called. */
    String word() {
        return onEdge ? "high" : "wide";
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
                    .flatMap(this::side)
                    .ifPresent(reading -> widen(reading, longMm(leg.end()), List.of()));
        }
        end(told.to(), run.legs().get(run.legs().size() - 1).end());
    }

    private void end(ToldEnd end, Section section) {
        if (end.onRun()) {
            return;
        }
        ToldTerminal terminal = house.told().terminals().get(end.name());
        if (terminal != null) {
            side(terminal.placed().sizes())
                    .ifPresent(reading ->
                            widen(reading, longMm(section), terminal.placed().at()));
        }
        spigot(end.name())
                .ifPresent(spigot ->
                        side(spigot.sizes()).ifPresent(reading -> widen(reading, longMm(section), spigot.at())));
    }

    /** The reading of a station's long side; on an upright leg its fore and aft side may be typed as long. */
    private Optional<Reading> side(ToldSection section) {
        return onEdge ? section.high().or(section::longMm) : section.wide();
    }

    private Optional<Reading> side(ToldSizes sizes) {
        return onEdge ? sizes.highMm() : sizes.wideMm();
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
            boolean across = (onEdge ? UPRIGHT : LEVEL).contains(place.face());
            if (across && place.far().isEmpty() && !place.out()) {
                edits.put(place.near().path(), house.now(place.near()).value() - more / 2);
            }
        }
    }
}
