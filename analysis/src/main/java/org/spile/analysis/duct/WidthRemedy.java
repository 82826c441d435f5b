package org.spile.analysis.duct;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.kernel.measure.Written;

/**
 * The width that would make a run carry like the pipe it stands in for, at the depth there is: every place along it that is
 * narrower is widened, its two ends about their middles.
 *
 * <p>Tried on the house: offered as an edit only if the house still adds up, the run then passes and nothing else begins to
 * fail; else the sentence says what stands in the way.
 */
final class WidthRemedy {
    private static final int TRIES = 40;
    private static final double SLACK_MM = 1e-6;

    /** So many that an edit is what was tried: middles stay to a micrometre. */
    private static final int DECIMALS = 3;

    private final House house;
    private final RunDuct duct;
    private final PipeComparison compared;
    private final Function<House, List<Finding>> others;

    WidthRemedy(House house, RunDuct duct, PipeComparison compared, Function<House, List<Finding>> others) {
        this.others = others;
        this.house = house;
        this.duct = duct;
        this.compared = compared;
    }

    List<Remedy> remedies() {
        var shape = SectionShape.like(duct.narrow().section());
        var enough = CarryingWidth.mm(compared.pipe(), shape, duct.depthMm(), compared.flowM3s());
        var surely = CarryingWidth.surelyMm(compared.pipe(), shape, worstDepthMm(), compared.flowM3s());
        if (enough.result().isEmpty() || surely.result().isEmpty()) {
            String because = enough.because().or(surely::because).orElseThrow();
            return List.of(new Remedy("not possible by width alone: " + because, List.of()));
        }
        double wideMm = passing(shape, Math.ceil(surely.result().get() + doubtMm() - SLACK_MM));
        var widening = new Widening(house, duct.run(), wideMm, duct.depthMm());
        String says = "make it " + Written.number(wideMm, 0) + " mm " + widening.word() + " all along, at the depth of "
                + Written.number(duct.depthMm(), 1) + " mm there is ("
                + Written.number(enough.result().get(), 0)
                + " mm by method J alone)";
        Map<String, Double> edits = widening.edits();
        return List.of(tried(says, edits));
    }

    /** How much its tolerances may take off its width (mm). */
    private double doubtMm() {
        return longSide(duct.narrow()) - longSide(duct.least());
    }

    private static double longSide(StraightDuct duct) {
        return Math.max(duct.section().wideMm(), duct.section().highMm());
    }

    private double worstDepthMm() {
        return Math.min(duct.least().section().wideMm(), duct.least().section().highMm());
    }

    private Remedy tried(String says, Map<String, Double> edits) {
        Optional<House> changed = changed(edits);
        if (changed.isEmpty()) {
            return new Remedy(says + "; what it begins and ends at doesn't take that as it stands", List.of());
        }
        Set<String> failing = new TreeSet<>();
        others.apply(house).stream().filter(WidthRemedy::fails).forEach(finding -> failing.add(finding.id()));
        return others.apply(changed.get()).stream()
                .filter(WidthRemedy::fails)
                .filter(finding -> !failing.contains(finding.id()))
                .findFirst()
                .map(spoilt -> new Remedy(
                        "not possible as the house stands: to " + says + " would do, but then " + spoilt.because(),
                        List.of()))
                .orElseGet(() -> new Remedy(says, set(edits)));
    }

    private static boolean fails(Finding finding) {
        return finding.verdict() == Verdict.FAILS;
    }

    /** Near the transition the band is wider than for sizing: a few millimetres more, until no method objects. */
    private double passing(SectionShape shape, double startMm) {
        double wideMm = startMm;
        for (int i = 0; i < TRIES && !passes(shape, wideMm); i++) {
            wideMm = Math.ceil(wideMm * 1.01);
        }
        return wideMm;
    }

    private boolean passes(SectionShape shape, double wideMm) {
        return StraightDuct.of(
                        shape.of(wideMm - doubtMm(), worstDepthMm()),
                        duct.narrow().roughMm(),
                        duct.narrow().air())
                .then(wide -> PipeComparison.of(wide, compared.pipe().section().wideMm(), compared.flowM3s()))
                .result()
                .filter(made -> made.verdict() == Verdict.PASSES)
                .isPresent();
    }

    /** The house with the run widened, if it adds up and the run then passes. */
    private Optional<House> changed(Map<String, Double> edits) {
        if (edits.isEmpty() || !house.readings().keySet().containsAll(edits.keySet())) {
            return Optional.empty();
        }
        return house.with(edits) instanceof Resolved.Sound sound && passes(sound.house())
                ? Optional.of(sound.house())
                : Optional.empty();
    }

    private boolean passes(House changed) {
        return RunDuct.in(changed, duct.run().id())
                .flatMap(run -> run.verdict().result())
                .filter(verdict -> verdict == Verdict.PASSES)
                .isPresent();
    }

    private static List<String> set(Map<String, Double> edits) {
        return edits.entrySet().stream()
                .map(edit -> edit.getKey() + "=" + Written.number(edit.getValue(), DECIMALS) + " mm")
                .toList();
    }
}
