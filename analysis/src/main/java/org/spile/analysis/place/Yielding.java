package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import org.spile.analysis.fit.Ban;
import org.spile.analysis.fit.Limit;
import org.spile.geometry.kernel.planar.Outline;

/**
 * By how much each limit, or each thing in the way, would have to yield for a place to open. Asking less never takes a place
 * away, so the least yield is found by halving.
 */
final class Yielding {
    /** Nothing gives way by more (mm). */
    private static final double MOST_MM = 1000;

    private static final double FINE_MM = 0.005;
    private static final double TENTHS = 10;

    private final Charts charts;

    Yielding(Charts charts) {
        this.charts = charts;
    }

    List<NoPlace.Asked> limits() {
        List<NoPlace.Asked> asked = new ArrayList<>();
        for (Limit limit : asking()) {
            Predicate<Ban> its = ban -> ban.limit().id().equals(limit.id());
            double aloneMm2 = charts.areaMm2(its);
            asked.add(new NoPlace.Asked(
                    limit, aloneMm2, limit.askedMm() > 0 ? asksLess(its, limit) : OptionalDouble.empty()));
        }
        return asked;
    }

    /** The limits that take some place away. */
    private List<Limit> asking() {
        Map<String, Limit> limits = new LinkedHashMap<>();
        charts.bans().stream()
                .filter(ban -> !limits.containsKey(ban.limit().id()))
                .filter(ban -> charts.all().stream().anyMatch(chart -> chart.concerns(ban)))
                .forEach(ban -> limits.put(ban.limit().id(), ban.limit()));
        return List.copyOf(limits.values());
    }

    private OptionalDouble asksLess(Predicate<Ban> its, Limit limit) {
        return least(
                its,
                limit.askedMm(),
                (chart, rest, byMm) -> chart.leaves(rest, its, ban -> ban.at(limit.askedMm() - byMm)));
    }

    List<NoPlace.Way> things() {
        Map<String, String> titles = new LinkedHashMap<>();
        charts.bans().stream()
                .filter(Ban::isThing)
                .filter(ban -> charts.all().stream().anyMatch(chart -> chart.concerns(ban)))
                .forEach(ban -> titles.putIfAbsent(ban.against(), ban.title()));
        List<NoPlace.Way> things = new ArrayList<>();
        titles.forEach((id, title) -> {
            Predicate<Ban> its = ban -> ban.isThing() && ban.against().equals(id);
            things.add(new NoPlace.Way(
                    id,
                    title,
                    least(its, MOST_MM, (chart, rest, byMm) -> chart.leaves(rest, its, ban -> ban.relaxed(byMm)))));
        });
        return things;
    }

    /** The pairs of limits that open a place if neither is asked. */
    List<List<Limit>> pairs() {
        List<Limit> limits =
                asking().stream().filter(limit -> limit.askedMm() > 0).toList();
        List<List<Limit>> pairs = new ArrayList<>();
        for (int i = 0; i < limits.size(); i++) {
            for (int j = i + 1; j < limits.size(); j++) {
                String one = limits.get(i).id();
                String other = limits.get(j).id();
                Predicate<Ban> rest = ban ->
                        !ban.limit().id().equals(one) && !ban.limit().id().equals(other);
                if (charts.areas(rest).stream().anyMatch(areas -> !areas.isEmpty())) {
                    pairs.add(List.of(limits.get(i), limits.get(j)));
                }
            }
        }
        return pairs;
    }

    private interface Trial {
        boolean opens(Chart chart, List<Outline> rest, double byMm);
    }

    private OptionalDouble least(Predicate<Ban> its, double mostMm, Trial trial) {
        List<List<Outline>> rest = charts.areas(its.negate());
        DoublePredicate opens = byMm -> {
            for (int i = 0; i < rest.size(); i++) {
                if (!rest.get(i).isEmpty() && trial.opens(charts.all().get(i), rest.get(i), byMm)) {
                    return true;
                }
            }
            return false;
        };
        if (rest.stream().allMatch(List::isEmpty) || !opens.test(mostMm)) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = mostMm;
        while (high - low > FINE_MM) {
            double middle = (low + high) / 2;
            if (opens.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of(Math.ceil((high - FINE_MM) * TENTHS) / TENTHS);
    }
}
