package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldLine;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;

/**
 * What runs and lines share: a path from an end to an end.
 *
 * @param kind what its legs are
 * @param layers from the inside out; of a line, what is round its outside size
 * @param within how many layers its typed sections take in
 * @param section the section a line has from the start; a run's comes from its spigot
 * @param bendKind of its corners, where a station doesn't say
 * @param radius of its bends, where a station doesn't say
 * @param fall of its level legs, as a ratio
 */
record Course(
        String path,
        String id,
        String title,
        PartKind kind,
        ToldEnd from,
        ToldEnd to,
        List<ToldStation> stations,
        List<ToldLayer> layers,
        int within,
        Optional<ToldSection> section,
        String bendKind,
        Optional<Reading> radius,
        Optional<Reading> fall) {

    static Course of(ToldRun run) {
        return new Course(
                run.path(),
                run.id(),
                run.title(),
                PartKind.DUCT,
                run.from(),
                run.to(),
                run.stations(),
                run.layers(),
                run.layersWithin(),
                Optional.empty(),
                run.bendKind(),
                Optional.empty(),
                Optional.empty());
    }

    static Course of(ToldLine line) {
        return new Course(
                line.path(),
                line.id(),
                line.title(),
                PartKind.LINE,
                line.from(),
                line.to(),
                line.stations(),
                line.layers(),
                0,
                Optional.of(line.section()),
                line.radius().isPresent() ? "radius" : "mitred",
                line.radius(),
                line.kind().equals("drain") ? line.fall() : Optional.empty());
    }

    boolean duct() {
        return kind == PartKind.DUCT;
    }
}
