package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.house.Travels.Approach;
import org.spile.geometry.house.Travels.Mover;

/**
 * Does everything stay clear while something moves: movers and doors on their whole way, and a trailer on its way to its dock.
 *
 * <p>From the first stance to another its movers go one after the other, in an order that stays clear if there is one
 * ({@link Sequence}). What no stance moves goes from shut to wide open in the first stance.
 */
public final class OnTheWay implements Check {
    private static final String NAME = "travel";
    private static final String MOVER = NAME + ".mover";
    private static final String DOCK = NAME + ".dock";

    /** The last piece of a trailer's way, which it comes straight [our choice, no source]. */
    private static final double STRAIGHT_MM = 1500;

    /** The question, for every stance. */
    public OnTheWay() {
        // Nothing to set up; stated because the package is exported.
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public List<String> names() {
        return List.of(MOVER, DOCK);
    }

    @Override
    public List<Finding> findings(House house) {
        Travels travels = house.travels();
        List<Way> ways = new ArrayList<>();
        Set<String> moved = new LinkedHashSet<>();
        String home = house.stances().get(0);
        Map<String, Double> rest = positions(travels, home);
        for (String stance : house.stances()) {
            Map<String, Double> there = positions(travels, stance);
            List<Mover> movers = travels.movers().stream()
                    .filter(mover -> !there.get(mover.id()).equals(rest.get(mover.id())))
                    .toList();
            movers.forEach(mover -> moved.add(mover.id()));
            ways.addAll(new Sequence(house, stance, rest, there, MOVER).ways(movers));
        }
        for (Mover mover : travels.movers()) {
            if (!moved.contains(mover.id())) {
                ways.add(Way.of(house, home, rest, mover, 0, mover.full(), MOVER, ""));
            }
        }
        List<Finding> findings = new ArrayList<>();
        ways.forEach(way -> findings.add(cured(house, way)));
        for (String stance : house.stances()) {
            for (Approach approach : travels.approaches()) {
                if (docked(house.scene(stance), approach)) {
                    findings.add(Journey.ofTrailer(house, stance, approach, STRAIGHT_MM)
                            .worst(DOCK, "")
                            .finding());
                }
            }
        }
        return findings;
    }

    private static Finding cured(House house, Way way) {
        Finding finding = way.answer().finding();
        boolean wanting = finding.verdict() == Verdict.FAILS || finding.verdict() == Verdict.TIGHT;
        return wanting ? finding.with(new ShorterWay(house).of(way).stream().toList()) : finding;
    }

    private static boolean docked(Scene scene, Approach approach) {
        return scene.trailers().stream()
                        .filter(place -> place.id().equals(approach.trailer())
                                || place.id().equals(approach.host()))
                        .count()
                == 2;
    }

    private static Map<String, Double> positions(Travels travels, String stance) {
        Map<String, Double> positions = new LinkedHashMap<>();
        travels.movers().forEach(mover -> positions.put(mover.id(), travels.position(stance, mover.id())));
        return positions;
    }
}
