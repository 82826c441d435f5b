package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.fit.Fit;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/**
 * The least drop of a ceiling, or the thickest insulation, at which a place opens.
 *
 * <p>Whether there is a place need not go one way as a ceiling is lowered, so nothing is halved. If there is none even with
 * everything allowed h nearer than asked, there is none until something has moved by h: the search goes on by as much, and
 * what it has passed is surely empty. When the steps get too short, the next tenth of a millimetre is tried.
 */
final class LeverSearch {
    private static final double FARTHEST_MM = 300;
    private static final double LEAST_STEP_MM = 0.02;
    private static final double TENTH_MM = 0.1;
    private static final int MOST_STEPS = 60;

    /** A lining thinner by 1 mm moves its face by 1 mm, and what hangs from it, under a roof of 60 degrees, by 2 more. */
    private static final double LINING_SPEED = 3;

    private final House house;
    private final FreeUnit unit;
    private final String path;
    private final List<Double> yawsDeg;

    /**
     * @param house the whole house
     * @param unit the unit in a house without what goes with it
     */
    LeverSearch(House house, FreeUnit unit, String path, List<Double> yawsDeg) {
        this.house = house;
        this.unit = unit;
        this.path = path;
        this.yawsDeg = List.copyOf(yawsDeg);
    }

    List<NoPlace.Lever> levers() {
        List<NoPlace.Lever> levers = new ArrayList<>();
        for (String drop : drops()) {
            reading(drop).ifPresent(now -> levers.add(search(now, 1, FARTHEST_MM, 1)));
        }
        for (String lining : insulation()) {
            reading(lining).ifPresent(now -> levers.add(search(now, -1, now.value(), LINING_SPEED)));
        }
        return levers;
    }

    /** The area at each yaw with a reading changed; nothing if the house doesn't add up with it. */
    Optional<Charts> with(String reading, double value) {
        return unit.house().with(Map.of(reading, value)) instanceof Resolved.Sound sound
                ? sound.house().freed(unit.id()).flatMap(free -> Charts.of(free, path, yawsDeg))
                : Optional.empty();
    }

    Optional<Reading> reading(String readingPath) {
        return Optional.ofNullable(unit.house().readings().get(readingPath));
    }

    /** The drops of the ceilings of the cavities it is in. */
    List<String> drops() {
        return unit.house().scene(unit.house().stances().get(0)).cavities().stream()
                .filter(cavity -> cavity.hasCeiling() && cavity.id().equals(unit.in()))
                .map(CavitySpace::dropPath)
                .toList();
    }

    private Set<String> insulation() {
        Set<String> paths = new LinkedHashSet<>();
        ToldCavity cavity = unit.house().told().cavities().get(unit.in());
        if (cavity == null) {
            return paths;
        }
        String within = cavity.placed().path() + ".";
        unit.house().readings().forEach((reading, value) -> {
            int key = reading.lastIndexOf('.');
            boolean lining = reading.startsWith(within) && reading.contains(".linings[");
            if (lining
                    && unit.house()
                            .materials()
                            .named(reading.substring(key + 1))
                            .filter(Material::insulates)
                            .isPresent()) {
                paths.add(reading);
            }
        });
        return paths;
    }

    private NoPlace.Lever search(Reading now, int sign, double farMm, double speed) {
        double gone = 0;
        for (int step = 0; step < MOST_STEPS && gone < farMm; step++) {
            Optional<Charts> charts =
                    step == 0 ? Charts.of(unit, path, yawsDeg) : with(now.path(), value(now, sign, gone));
            if (charts.isEmpty()) {
                break;
            }
            double by = surelyEmptyFor(charts.get(), (farMm - gone) * speed) / speed;
            if (by < LEAST_STEP_MM) {
                return found(now, sign, gone, farMm);
            }
            gone += by;
        }
        return new NoPlace.Lever(
                now.path(),
                now.value(),
                value(now, sign, Math.min(gone, farMm)),
                OptionalDouble.empty(),
                0,
                Optional.empty(),
                List.of());
    }

    private static double value(Reading now, int sign, double byMm) {
        return now.value() + sign * byMm;
    }

    /** By how much everything may come nearer with still no place: at most so much, and surely. */
    private static double surelyEmptyFor(Charts charts, double mostMm) {
        if (charts.surelyEmpty(mostMm)) {
            return mostMm;
        }
        double low = 0;
        double high = mostMm;
        while (high - low > Math.max(LEAST_STEP_MM / 4, low / 50)) {
            double middle = (low + high) / 2;
            if (charts.surelyEmpty(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The next tenth at which there is a place. */
    private NoPlace.Lever found(Reading now, int sign, double gone, double farMm) {
        double tenth = sign > 0
                ? Math.ceil((now.value() + gone) / TENTH_MM - 1e-6)
                : Math.floor((now.value() - gone) / TENTH_MM + 1e-6);
        for (int i = 0; i < 5; i++) {
            double value = Double.parseDouble(Written.number((tenth + sign * i) * TENTH_MM, 1));
            if (Math.abs(value - now.value()) > farMm + TENTH_MM || (sign < 0 && value < 0)) {
                break;
            }
            Optional<Charts> charts = with(now.path(), value);
            double areaMm2 = charts.map(all -> all.areaMm2(ban -> true)).orElse(0.0);
            if (areaMm2 > 0) {
                return new NoPlace.Lever(
                        now.path(),
                        now.value(),
                        value(now, sign, gone),
                        OptionalDouble.of(value),
                        areaMm2,
                        Optional.of(now.path() + "=" + Written.number(value, 1)),
                        spoils(now.path(), value));
            }
        }
        return new NoPlace.Lever(
                now.path(),
                now.value(),
                value(now, sign, gone),
                OptionalDouble.empty(),
                0,
                Optional.empty(),
                List.of());
    }

    /** What the change does to the whole house, with the unit where it is: new failures, or that it doesn't add up. */
    private List<String> spoils(String reading, double value) {
        Resolved changed = house.with(Map.of(reading, value));
        if (changed instanceof Resolved.Wrong wrong) {
            return wrong.troubles().stream()
                    .map(trouble -> trouble.path() + ": " + trouble.says())
                    .toList();
        }
        Set<String> failed = new LinkedHashSet<>();
        for (Finding finding : Fit.standing(house)) {
            if (finding.verdict() == Verdict.FAILS) {
                failed.add(finding.id());
            }
        }
        List<String> spoilt = new ArrayList<>();
        for (Finding finding : Fit.standing(((Resolved.Sound) changed).house())) {
            if (finding.verdict() == Verdict.FAILS && !failed.contains(finding.id())) {
                spoilt.add(finding.because());
            }
        }
        return spoilt;
    }
}
