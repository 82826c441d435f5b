package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.spile.analysis.duct.CarriedRound;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Trouble;

/**
 * One or two values of a house swept over their ranges: in every point the whole house is worked out and asked again.
 *
 * <p>A point fits if nothing shown fails or is open; what ducts are worth bars nothing, it is weighed. Among those that fit the
 * front is marked: by the ends wanted of the swept values, by whether it holds with every tolerance too, and by what the
 * runs shown carry like; if none of these tells points apart, by the least margin.
 *
 * @param variations one or two
 * @param shown what is looked at
 * @param points the first variation's values outermost
 */
public record Study(List<Variation> variations, List<Shown> shown, List<StudyPoint> points) {
    /** So many points at most: more would be no table that anybody reads. */
    public static final int MOST_POINTS = 400;

    /** So many values are swept at most. */
    public static final int MOST_VARIATIONS = 2;

    private static final double MICRONS = 1000;

    /** Copies the lists. */
    public Study {
        variations = List.copyOf(variations);
        shown = List.copyOf(shown);
        points = List.copyOf(points);
    }

    /**
     * Sweeps.
     *
     * @param variant the house with other values at some paths, in the variations' units
     * @param done told how many points are done, after each
     * @throws IllegalArgumentException if there are too many variations or points
     */
    public static Study of(
            Function<Map<String, Double>, Resolved> variant,
            List<Variation> variations,
            List<Shown> shown,
            IntConsumer done) {
        List<List<Double>> choices = choices(variations);
        if (variations.isEmpty() || variations.size() > MOST_VARIATIONS || choices.size() > MOST_POINTS) {
            throw new IllegalArgumentException(variations.size() + " variations, " + choices.size() + " points");
        }
        List<StudyPoint> points = new ArrayList<>();
        for (List<Double> choice : choices) {
            points.add(point(variant.apply(values(variations, choice)), shown, choice));
            done.accept(points.size());
        }
        return new Study(variations, shown, marked(variations, points));
    }

    /** Those on the front, in order. */
    public List<StudyPoint> front() {
        return points.stream().filter(StudyPoint::front).toList();
    }

    private static List<List<Double>> choices(List<Variation> variations) {
        List<List<Double>> choices = List.of(List.of());
        for (Variation variation : variations) {
            List<List<Double>> longer = new ArrayList<>();
            for (List<Double> choice : choices) {
                for (double value : variation.values()) {
                    List<Double> more = new ArrayList<>(choice);
                    more.add(value);
                    longer.add(more);
                }
            }
            choices = longer;
        }
        return choices;
    }

    private static Map<String, Double> values(List<Variation> variations, List<Double> choice) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (int i = 0; i < choice.size(); i++) {
            for (String path : variations.get(i).paths()) {
                values.put(path, choice.get(i));
            }
        }
        return values;
    }

    private static StudyPoint point(Resolved resolved, List<Shown> shown, List<Double> choice) {
        if (resolved instanceof Resolved.Wrong wrong) {
            Trouble first = wrong.troubles().get(0);
            String says = first.says().startsWith(first.path()) ? first.says() : first.path() + ": " + first.says();
            return new StudyPoint(choice, Optional.of(says), List.of(), List.of(), false);
        }
        House house = ((Resolved.Sound) resolved).house();
        List<String> checks = shown.stream().map(Shown::check).distinct().toList();
        List<Finding> findings = Checks.standing(house, checks).all();
        return new StudyPoint(
                choice,
                Optional.empty(),
                shown.stream().map(each -> ShownAnswer.of(each, findings)).toList(),
                carried(house, shown, findings),
                false);
    }

    /** The runs that the findings shown are about, with what each carries like. */
    private static List<StudyPoint.Carried> carried(House house, List<Shown> shown, List<Finding> findings) {
        List<StudyPoint.Carried> carried = new ArrayList<>();
        for (var run : house.runs()) {
            boolean wanted = findings.stream()
                    .filter(finding -> finding.check().startsWith("duct.")
                            && finding.subject().equals(run.path()))
                    .anyMatch(finding -> shown.stream().anyMatch(each -> each.takes(finding)));
            if (wanted && run.flowM3s().isPresent()) {
                carried.add(new StudyPoint.Carried(
                        run.path(), CarriedRound.of(house, run).result()));
            }
        }
        return carried;
    }

    private static List<StudyPoint> marked(List<Variation> variations, List<StudyPoint> points) {
        List<StudyPoint> fitting = points.stream().filter(StudyPoint::fits).toList();
        List<List<Double>> worths =
                fitting.stream().map(point -> worth(variations, point)).toList();
        if (worths.stream().distinct().count() < 2) {
            worths = fitting.stream().map(Study::leastMargin).toList();
        }
        List<Boolean> front = Front.of(worths);
        List<StudyPoint> marked = new ArrayList<>();
        int next = 0;
        for (StudyPoint point : points) {
            marked.add(point.fits() ? point.onFront(front.get(next++)) : point);
        }
        return marked;
    }

    private static List<Double> worth(List<Variation> variations, StudyPoint point) {
        List<Double> worth = new ArrayList<>();
        for (int i = 0; i < variations.size(); i++) {
            worth.add(variations.get(i).aim().worth(point.values().get(i)));
        }
        boolean tight = point.verdict().filter(Verdict.TIGHT::equals).isPresent();
        worth.add(tight ? 0.0 : 1.0);
        for (StudyPoint.Carried carried : point.carried()) {
            double round = carried.roundMm().map(Spread::value).orElse(0.0);
            worth.add(Math.rint(round * MICRONS) / MICRONS);
        }
        return worth;
    }

    private static List<Double> leastMargin(StudyPoint point) {
        return List.of(point.answers().stream()
                .flatMap(answer -> answer.worst().stream())
                .mapToDouble(margin -> Math.rint(margin.number() * MICRONS) / MICRONS)
                .min()
                .orElse(0));
    }
}
