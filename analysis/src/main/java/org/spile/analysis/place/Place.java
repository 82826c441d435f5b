package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.House;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.planar.FreePlan;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Roomiest;

/**
 * Every place where a unit fits, in every stance, at its resting height.
 *
 * <p>A place is one at which nothing of fit fails because of the unit as drawn; what is tight there still fits. What goes with
 * the unit and would have to be made anew (boxes that join it, ducts and lines that start at it) is left out and named.
 */
public final class Place {
    /** The yaws that are looked at if none is named (degrees). */
    public static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);

    private static final double SAME_MM = 0.01;
    private static final double[] FURTHER_MM = {0, 2, 5, 10, 20, 40};

    private final House house;
    private final FreeUnit unit;
    private final String path;
    private final List<Double> yawsDeg;

    private Place(House house, FreeUnit unit, List<Double> yawsDeg) {
        this.house = house;
        this.unit = unit;
        this.path = "units." + unit.id();
        this.yawsDeg = List.copyOf(yawsDeg);
    }

    /**
     * The places of a unit.
     *
     * @param house worked out; its stances are those looked at
     * @param unit id of a unit
     * @param yawsDeg how far its front may be turned from its trailer's forward to the left (degrees), at least one
     * @return the answer, or nothing if the unit has no place of its own, because it joins another or sits in a duct
     * @throws IllegalArgumentException if there is no such unit, or no yaw
     */
    public static Optional<PlaceAnswer> of(House house, String unit, List<Double> yawsDeg) {
        if (yawsDeg.isEmpty()) {
            throw new IllegalArgumentException("at least one yaw must be looked at");
        }
        return house.freed(unit).map(free -> new Place(house, free, yawsDeg).answer());
    }

    private PlaceAnswer answer() {
        Optional<Charts> charts = Charts.of(unit, path, yawsDeg);
        if (charts.isEmpty()) {
            String why = "how high " + path + " stands isn't the same rule everywhere: give its height by one distance";
            return answer(List.of(), false, Optional.of(why), Optional.empty(), Optional.empty());
        }
        List<PlaceMap> maps = charts.get().all().stream().map(Place::map).toList();
        boolean none = maps.stream().allMatch(map -> map.free().isEmpty());
        LeverSearch search = new LeverSearch(house, unit, path, yawsDeg);
        Optional<NoPlace> empty = none ? Optional.of(whyNone(charts.get(), search)) : Optional.empty();
        return answer(maps, fitsNow(maps), Optional.empty(), empty, growth(search, empty));
    }

    private PlaceAnswer answer(
            List<PlaceMap> maps,
            boolean fitsNow,
            Optional<String> notKnown,
            Optional<NoPlace> empty,
            Optional<Growth> growth) {
        var told = unit.house().told().units().get(unit.id()).placed();
        return new PlaceAnswer(
                path,
                told.title(),
                unit.trailer(),
                unit.in(),
                unit.place(),
                unit.yawDeg(),
                fitsNow,
                unit.leftOut(),
                house.stances(),
                maps,
                notKnown,
                empty,
                growth);
    }

    private static PlaceMap map(Chart chart) {
        FreePlan free = chart.free();
        Optional<Roomiest> best = Roomiest.of(free);
        Optional<Vector3D> place = best.map(one -> {
            Vector2D at = one.place();
            return Vector3D.of(at.getX(), at.getY(), chart.heightAt(at));
        });
        return new PlaceMap(
                chart.yawDeg(), free, place, best.map(Roomiest::roomMm).orElse(0.0), chart.box());
    }

    private boolean fitsNow(List<PlaceMap> maps) {
        Vector2D now = Vector2D.of(unit.place().getX(), unit.place().getY());
        return maps.stream()
                .filter(map -> Math.abs(map.yawDeg() - unit.yawDeg()) < 1e-6)
                .anyMatch(map -> isAmong(map.free(), now));
    }

    private static boolean isAmong(FreePlan free, Vector2D place) {
        Outline spot = Outline.rectangle(
                place.getX() - SAME_MM, place.getY() - SAME_MM, place.getX() + SAME_MM, place.getY() + SAME_MM);
        return free.areas().stream().anyMatch(area -> area.contains(place) || area.distanceTo(spot) == 0)
                || free.points().stream().anyMatch(point -> point.distance(place) <= SAME_MM)
                || free.lines().stream().anyMatch(line -> passes(line, place));
    }

    private static boolean passes(List<Vector2D> line, Vector2D place) {
        for (int i = 0; i + 1 < line.size(); i++) {
            Vector2D a = line.get(i);
            Vector2D side = line.get(i + 1).subtract(a);
            double along = Math.max(0, Math.min(1, place.subtract(a).dot(side) / side.normSq()));
            if (a.add(side.multiply(along)).distance(place) <= SAME_MM) {
                return true;
            }
        }
        return false;
    }

    private static NoPlace whyNone(Charts charts, LeverSearch search) {
        Yielding yielding = new Yielding(charts);
        List<NoPlace.Asked> limits = yielding.limits();
        boolean single = limits.stream().anyMatch(asked -> asked.yieldMm().isPresent());
        double tooLargeMm =
                charts.all().stream().mapToDouble(Chart::tooLargeMm).min().orElse(0);
        return new NoPlace(
                tooLargeMm, limits, yielding.things(), single ? List.of() : yielding.pairs(), search.levers());
    }

    /** From the present drop on, or from the first that opens a place. */
    private Optional<Growth> growth(LeverSearch search, Optional<NoPlace> empty) {
        Optional<Reading> drop = search.drops().stream().findFirst().flatMap(search::reading);
        if (drop.isEmpty()) {
            return Optional.empty();
        }
        double from = empty.map(none -> none.levers().stream()
                        .filter(lever -> lever.path().equals(drop.get().path()))
                        .findFirst()
                        .map(lever -> lever.toMm().orElse(Double.NaN))
                        .orElse(Double.NaN))
                .orElse(drop.get().value());
        if (Double.isNaN(from)) {
            return Optional.empty();
        }
        List<Growth.Row> rows = new ArrayList<>();
        for (double further : FURTHER_MM) {
            search.with(drop.get().path(), from + further)
                    .ifPresent(charts -> rows.add(new Growth.Row(
                            from + further,
                            charts.areas(ban -> true).stream()
                                    .map(areas -> areas.stream()
                                            .mapToDouble(Outline::areaMm2)
                                            .sum())
                                    .toList())));
        }
        return Optional.of(new Growth(drop.get().path(), rows));
    }
}
