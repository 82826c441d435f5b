package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.spile.analysis.duct.CarriedRound;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.whole.Aim;
import org.spile.analysis.whole.Checks;
import org.spile.analysis.whole.Shown;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;

/** Drop against insulation against duct depth. */
class StudyTest {
    private static final double EXACT = 1e-6;

    /**
     * Over the cooler are 46 less the insulation, 20 asked; under it 262 + drop - 46 - 200, 15 asked. So the least margin is
     * the lesser of 26 - insulation and 1 + drop.
     */
    @Test
    void loft_byHand() {
        Study study = study(
                Sample.named("loft").house(),
                List.of(
                        variation("cavities.loft.ceiling.drop", 0, 4, 1),
                        variation("cavities.loft.top.linings[1].pir", 22, 27, 1)),
                "fit.maker");
        assertEquals(5 * 6, study.points().size());
        for (StudyPoint point : study.points()) {
            double drop = point.values().get(0);
            double pir = point.values().get(1);
            double margin = Math.min(26 - pir, 1 + drop);
            assertEquals(margin, point.answers().get(0).margin().orElseThrow().number(), EXACT);
            assertEquals(
                    margin >= 0 ? Verdict.PASSES : Verdict.FAILS,
                    point.verdict().orElseThrow());
            assertEquals(margin >= 0, point.fits());
        }
    }

    /** Least drop and most insulation want the same point: no drop is needed, and 26 mm are the most that pass. */
    @Test
    void loft_oneToChoose() {
        Study study = study(
                Sample.named("loft").house(),
                List.of(
                        variation("cavities.loft.ceiling.drop", 0, 4, 1),
                        variation("cavities.loft.top.linings[1].pir", 22, 27, 1)),
                "fit.maker");
        assertEquals(
                List.of(List.of(0.0, 26.0)),
                study.front().stream().map(StudyPoint::values).toList());
    }

    /** A cooler 205 high lacks 4 below until the ceiling drops by 4; taller ones need more: each drop has its tallest. */
    @Test
    void loft_aRealTradeOff() {
        Study study = study(
                Sample.named("loft").house(),
                List.of(
                        variation("cavities.loft.ceiling.drop", 0, 4, 2),
                        new Variation(List.of("units.cooler.high"), "mm", Variation.range(199, 206, 1), Aim.MOST)),
                "fit.maker");
        assertEquals(
                List.of(List.of(0.0, 201.0), List.of(2.0, 203.0), List.of(4.0, 205.0)),
                study.front().stream().map(StudyPoint::values).toList());
    }

    /** Without an end to be wanted the largest least margin counts: 1 + drop below, 1 above, so from a drop of 0 on it is 1. */
    @Test
    void loft_withoutWishesTheMargin() {
        Study study = study(
                Sample.named("loft").house(),
                List.of(new Variation(List.of("cavities.loft.high"), "mm", Variation.range(260, 264, 1), Aim.NONE)),
                "fit.maker");
        assertEquals(
                List.of(List.of(262.0), List.of(263.0), List.of(264.0)),
                study.front().stream().map(StudyPoint::values).toList());
    }

    /**
     * The cooler's bottom clearance lacks 6, at worst 16.5: from a drop of 6 on it is tight, from 16.5 on it passes. Above it
     * 48 less the insulation are left, 20 asked, of which 2 + 1 may be wrong: 25 mm pass, 28 are tight, 30 fail.
     */
    @Test
    void saltmarsh_dropAgainstInsulation() {
        Study study = study(
                Sample.named("saltmarsh").house(),
                List.of(
                        new Variation(
                                List.of("cavities.lobby-top.ceiling.drop"), "mm", List.of(0.0, 6.0, 16.5), Aim.LEAST),
                        new Variation(
                                List.of("cavities.lobby-top.top.linings[1].pir"),
                                "mm",
                                List.of(25.0, 28.0, 30.0),
                                Aim.MOST)),
                "fit.maker/units.cooler");
        List<Verdict> verdicts = study.points().stream()
                .map(point -> point.verdict().orElseThrow())
                .toList();
        assertEquals(
                List.of(
                        Verdict.FAILS,
                        Verdict.FAILS,
                        Verdict.FAILS,
                        Verdict.TIGHT,
                        Verdict.TIGHT,
                        Verdict.FAILS,
                        Verdict.PASSES,
                        Verdict.TIGHT,
                        Verdict.FAILS),
                verdicts);
        assertEquals(
                List.of(List.of(6.0, 28.0), List.of(16.5, 25.0)),
                study.front().stream().map(StudyPoint::values).toList());
    }

    /** The flat duct grows in depth: it carries more with each millimetre, and at last touches; what it is worth is the duct's own. */
    @Test
    void saltmarsh_ductDepth() {
        House house = Sample.named("saltmarsh").house();
        var depth = new Variation(
                List.of("terminals.toilet.high", "units.fan-box.spigots.flat.high"),
                "mm",
                List.of(25.0, 27.0, 29.0),
                Aim.NONE);
        Study study = study(house, List.of(depth), "fit/runs.toilet-flat", "duct");
        List<Double> rounds = new ArrayList<>();
        for (StudyPoint point : study.points()) {
            assertEquals(
                    List.of("runs.toilet-flat"),
                    point.carried().stream().map(StudyPoint.Carried::run).toList());
            rounds.add(point.carried().get(0).roundMm().orElseThrow().value());
        }
        assertTrue(rounds.get(0) < rounds.get(1) && rounds.get(1) < rounds.get(2), rounds.toString());
        var run = house.runs().stream()
                .filter(each -> each.path().equals("runs.toilet-flat"))
                .findFirst()
                .orElseThrow();
        assertEquals(CarriedRound.of(house, run).result().orElseThrow().value(), rounds.get(0), EXACT);
        assertEquals(
                List.of(true, true, false),
                study.points().stream().map(StudyPoint::fits).toList());
        assertEquals(
                List.of(List.of(27.0)),
                study.front().stream().map(StudyPoint::values).toList());
    }

    /** A point is what {@code check} says of the same house. */
    @Test
    void pointsAreWhatCheckSays() {
        Sample loft = Sample.named("loft");
        Study study = study(loft.house(), List.of(variation("cavities.loft.top.linings[1].pir", 24, 27, 1)), "fit");
        for (StudyPoint point : study.points()) {
            var findings = loft.findings(
                            "cavities.loft.top.linings[1].pir=" + point.values().get(0))
                    .only("fit");
            assertEquals(findings.summary(), point.answers().get(0).summary());
        }
    }

    /** What is no house any more says so and is on no front. */
    @Test
    void noSuchHouse() {
        Study study = study(Sample.named("loft").house(), List.of(variation("units.cooler.at.top", 40, 90, 50)), "fit");
        assertFalse(study.points().isEmpty());
        Study worse = study(
                Sample.named("saltmarsh").house(), List.of(variation("units.cooler.at.top", 48, 50, 2)), "fit.void");
        assertTrue(
                worse.points().get(1).trouble().orElse("").contains("berth-grille"),
                worse.points().toString());
        assertFalse(worse.points().get(1).fits());
        assertTrue(worse.points().get(0).front());
    }

    @Test
    void tooMany() {
        House house = Sample.named("loft").house();
        var much = variation("units.cooler.high", 1, 401, 1);
        assertThrows(IllegalArgumentException.class, () -> study(house, List.of(much), "fit"));
        assertThrows(IllegalArgumentException.class, () -> study(house, List.of(), "fit"));
    }

    private static Variation variation(String path, double from, double to, double step) {
        return new Variation(List.of(path), "mm", Variation.range(from, to, step), Aim.usual(path));
    }

    private static Study study(House house, List<Variation> variations, String... shown) {
        List<Shown> all = List.of(shown).stream().map(Shown::of).toList();
        assertTrue(all.stream()
                .allMatch(each -> Checks.names().stream().anyMatch(name -> name.startsWith(each.check()))));
        return Study.of(values -> with(house, values), variations, all, done -> assertTrue(done > 0));
    }

    private static Resolved with(House house, Map<String, Double> values) {
        return house.with(values);
    }
}
