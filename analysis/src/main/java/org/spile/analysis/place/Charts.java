package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.spile.analysis.fit.Ban;
import org.spile.analysis.fit.Bans;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.kernel.planar.Outline;

/** The charts of a unit at every yaw asked, and the bans they share. */
record Charts(List<Chart> all, List<Ban> bans) {
    Charts {
        all = List.copyOf(all);
        bans = List.copyOf(bans);
    }

    /** The charts; nothing if it can't be said how high the unit stands at every place. */
    static Optional<Charts> of(FreeUnit unit, String path, List<Double> yawsDeg) {
        Map<String, List<Ban>> bans = Bans.of(unit.house(), path);
        List<Chart> charts = new ArrayList<>();
        for (double yawDeg : yawsDeg) {
            Optional<Chart> chart = Chart.of(unit, path, bans, yawDeg);
            if (chart.isEmpty()) {
                return Optional.empty();
            }
            charts.add(chart.get());
        }
        List<Ban> every = new ArrayList<>();
        bans.values().forEach(every::addAll);
        return Optional.of(new Charts(charts, every));
    }

    /** The areas that some bans leave, by yaw. */
    List<List<Outline>> areas(Predicate<Ban> which) {
        return all.stream().map(chart -> chart.areas(which)).toList();
    }

    double areaMm2(Predicate<Ban> which) {
        return areas(which).stream()
                .flatMap(List::stream)
                .mapToDouble(Outline::areaMm2)
                .sum();
    }

    /** Whether there is an area at any yaw. */
    boolean open() {
        return all.stream().anyMatch(chart -> !chart.areas(ban -> true).isEmpty());
    }

    boolean surelyEmpty(double byMm) {
        return all.stream().allMatch(chart -> chart.surelyEmpty(byMm));
    }
}
