package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.fit.Ban;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.RestingPlace;
import org.spile.geometry.kernel.planar.FreePlan;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Box3;

/** What is forbidden to a unit at one yaw, and what that leaves. */
final class Chart {
    /** A slot between walls is looked at together with what is beside it. */
    private static final double LEAST_WINDOW_MM = 1;

    private final double yawDeg;
    private final Map<String, List<Ban>> bans;
    private final Map<String, Setting> settings;
    private final List<RestingPlace> pieces;
    private final double tooLargeMm;
    private final Map<RestingPlace, Map<Ban, List<List<Vector2D>>>> asAsked = new HashMap<>();
    private final Rings forbidden = new Rings();

    private Chart(
            double yawDeg,
            Map<String, List<Ban>> bans,
            Map<String, Setting> settings,
            List<RestingPlace> pieces,
            double tooLargeMm) {
        this.yawDeg = yawDeg;
        this.bans = bans;
        this.settings = settings;
        this.pieces = pieces;
        this.tooLargeMm = tooLargeMm;
    }

    /** The chart of a unit; nothing if it can't be said how high it stands at every place. */
    static Optional<Chart> of(FreeUnit unit, String path, Map<String, List<Ban>> bans, double yawDeg) {
        Map<String, Setting> settings = new LinkedHashMap<>();
        for (String stance : bans.keySet()) {
            Setting.of(unit, path, unit.house().scene(stance), yawDeg).ifPresent(s -> settings.put(stance, s));
        }
        if (settings.isEmpty()) {
            return Optional.of(new Chart(yawDeg, bans, settings, List.of(), 0));
        }
        String stance = settings.keySet().iterator().next();
        Setting setting = settings.get(stance);
        Window window = Window.of(unit, path, unit.house().scene(stance), setting);
        if (window.isEmpty()) {
            return Optional.of(new Chart(yawDeg, bans, settings, List.of(), window.lacksMm()));
        }
        window = window.atLeast(LEAST_WINDOW_MM);
        Box3 box = setting.box();
        return unit.resting(
                        window.minX(),
                        window.minY(),
                        window.maxX(),
                        window.maxY(),
                        box.maxX() - box.minX(),
                        box.maxY() - box.minY())
                .map(pieces -> new Chart(yawDeg, bans, settings, pieces, 0));
    }

    /** By how much the unit is larger than what it is in, either way in the plan; 0 if it isn't. */
    double tooLargeMm() {
        return tooLargeMm;
    }

    double yawDeg() {
        return yawDeg;
    }

    /** How high the middle of the unit's box comes to stand at a place. */
    double heightAt(Vector2D place) {
        return pieces.stream()
                .filter(piece -> piece.over().contains(place))
                .findFirst()
                .map(piece -> piece.height().at(place.getX(), place.getY()))
                .orElse(Double.NaN);
    }

    /** The box round the unit's first body, as turned, about its middle. */
    Box3 box() {
        return settings.values().iterator().next().box();
    }

    /** What is left with every limit as asked, exact slots among it. */
    FreePlan free() {
        List<FreePlan> plans = new ArrayList<>();
        for (RestingPlace piece : pieces) {
            plans.add(FreePlan.of(List.of(piece.over()), rings(piece, ban -> true)));
        }
        return joined(plans);
    }

    /** The areas left by some of the bans. */
    List<Outline> areas(Predicate<Ban> which) {
        List<Outline> areas = new ArrayList<>();
        for (RestingPlace piece : pieces) {
            areas.addAll(FreePlan.areas(List.of(piece.over()), rings(piece, which)));
        }
        return pieces.size() == 1 ? areas : Regions.union(areas);
    }

    /** Whether a ban takes any place away. */
    boolean concerns(Ban ban) {
        return pieces.stream()
                .anyMatch(piece -> !rings(piece, one -> one == ban).isEmpty());
    }

    /** Whether some place of an area is left when some bans ask for something else. */
    boolean leaves(List<Outline> area, Predicate<Ban> which, Function<Ban, List<Ban.Apart>> asked) {
        for (RestingPlace piece : pieces) {
            List<List<Vector2D>> taken = new ArrayList<>();
            bans.forEach((stance, all) ->
                    all.stream().filter(which).forEach(ban -> taken.addAll(rings(stance, asked.apply(ban), piece))));
            List<Outline> within = Regions.intersection(area, List.of(piece.over()));
            if (!within.isEmpty() && !FreePlan.areas(within, taken).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Whether nothing is free even if everything may come so much nearer. */
    boolean surelyEmpty(double byMm) {
        for (RestingPlace piece : pieces) {
            List<List<Vector2D>> taken = new ArrayList<>();
            bans.forEach((stance, all) -> all.forEach(ban -> taken.addAll(rings(stance, ban.relaxed(byMm), piece))));
            if (!FreePlan.areas(List.of(piece.over()), taken).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private List<List<Vector2D>> rings(RestingPlace piece, Predicate<Ban> which) {
        Map<Ban, List<List<Vector2D>>> known = asAsked.computeIfAbsent(piece, p -> new HashMap<>());
        List<List<Vector2D>> rings = new ArrayList<>();
        bans.forEach((stance, all) -> {
            for (Ban ban : all) {
                if (which.test(ban)) {
                    rings.addAll(known.computeIfAbsent(
                            ban, b -> rings(stance, b.at(b.limit().askedMm()), piece)));
                }
            }
        });
        return rings;
    }

    private List<List<Vector2D>> rings(String stance, List<Ban.Apart> aparts, RestingPlace piece) {
        List<List<Vector2D>> rings = new ArrayList<>();
        Setting setting = settings.get(stance);
        if (setting != null) {
            aparts.forEach(apart -> rings.addAll(forbidden.of(setting, apart, piece)));
        }
        return rings;
    }

    private static FreePlan joined(List<FreePlan> plans) {
        if (plans.size() == 1) {
            return plans.get(0);
        }
        List<Outline> areas = new ArrayList<>();
        Set<List<Vector2D>> lines = new LinkedHashSet<>();
        Set<Vector2D> points = new LinkedHashSet<>();
        for (FreePlan plan : plans) {
            areas.addAll(plan.areas());
            lines.addAll(plan.lines());
            points.addAll(plan.points());
        }
        return new FreePlan(Regions.union(areas), List.copyOf(lines), List.copyOf(points));
    }
}
