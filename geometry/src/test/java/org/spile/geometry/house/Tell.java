package org.spile.geometry.house;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldLimits;
import org.spile.geometry.house.told.ToldProject;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** Tells small houses without a file. */
final class Tell {
    private Tell() {}

    static Reading mm(String path, double value) {
        return Reading.of(path, Kind.LENGTH, value);
    }

    static ToldSizes box(String path, double along, double across, double up) {
        return new ToldSizes(
                Optional.of(mm(path + ".long", along)),
                Optional.of(mm(path + ".wide", across)),
                Optional.of(mm(path + ".high", up)),
                Optional.empty(),
                Optional.empty());
    }

    static FaceDistance from(String path, String face, double distance) {
        return new FaceDistance(
                path + ".at." + face, face, mm(path + ".at." + face, distance), Optional.empty(), false);
    }

    static Placed placed(String section, String id, ToldSizes sizes, FaceDistance... at) {
        String path = section + "." + id;
        return new Placed(
                path,
                id,
                id,
                Optional.empty(),
                Arrays.asList(at),
                sizes,
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    static ToldLayer layer(String path, String material, double thick) {
        return new ToldLayer(path, material, mm(path + "." + material, thick));
    }

    static ToldSurface lined(String path, ToldLayer... linings) {
        return new ToldSurface(
                path,
                Optional.empty(),
                List.of(),
                Arrays.asList(linings),
                List.of(),
                Optional.of(Reading.byDefault(path + ".drop", Kind.LENGTH, 0)),
                Optional.empty());
    }

    static ToldCavity cavity(Placed placed, Optional<ToldSurface> top) {
        return new ToldCavity(placed, Optional.empty(), Optional.empty(), true, top, Map.of(), "");
    }

    static ToldUnit unit(Placed placed, Map<String, Reading> clearance) {
        return new ToldUnit(
                placed,
                "forward",
                List.of(),
                List.of(),
                "",
                List.of(),
                0,
                Optional.empty(),
                clearance,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                Optional.empty());
    }

    static ToldHouse house(List<ToldCavity> cavities, List<ToldUnit> units) {
        Map<String, ToldCavity> cavityById = new LinkedHashMap<>();
        cavities.forEach(cavity -> cavityById.put(cavity.placed().id(), cavity));
        Map<String, ToldUnit> unitById = new LinkedHashMap<>();
        units.forEach(unit -> unitById.put(unit.placed().id(), unit));
        return new ToldHouse(
                "",
                new ToldProject("", "", ""),
                Map.of(),
                Map.of(),
                cavityById,
                Map.of(),
                Map.of(),
                unitById,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                ToldLimits.only(Optional.empty()),
                Map.of(),
                Map.of(),
                Map.of());
    }
}
