package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.kernel.measure.Stack;

/** Thinner linings, flatter ducts and other places, each the least change; check values worked by hand. */
class RemediesTest {
    private static final String DUCT = "fit.clearance/runs.supply/fixtures.rail";

    /**
     * Under a rail whose underside is at 300 ± 1: a shelf at 0, 20 ± 0.5 of foam on it, a duct 240 clear + 2 x 1 of sheet +
     * 2 x 13 ± 1 of wrap = 268. Gap 300 - 20 - 268 = 12, asked 12: 0; less 1 + 0.5 + 2 = 3.5. So, each alone:
     *
     * <p>shelf foam 20 - 3.5 = 16.5; duct 240 - 3.5 = 236.5 high. What is only tight gets two, of different kinds.
     */
    @Test
    void eachLayerThatFillsTheGapMayShrink() {
        Finding finding = Asked.of(house(12)).expect(DUCT, 12, 12, -3.5, Verdict.TIGHT);
        assertEquals(
                List.of(
                        new Remedy(
                                "make the foam of bay.floor 16.5 mm thick at most, instead of 20 mm",
                                List.of("cavities.bay.floor.linings[1].foam=16.5")),
                        new Remedy(
                                "make supply.path[1] 236.5 mm high at most, instead of 240 mm",
                                List.of("runs.supply.path[1].high=236.5"))),
                finding.remedies());
    }

    /** Asked 20: 8 short as drawn, 11.5 at worst: shelf 20 - 11.5 = 8.5, wrap 13 - 11.5 / 2 = 7.25, so 7.2 to be safe. */
    @Test
    void saysWhatWouldDoAsDrawn() {
        List<Remedy> remedies = Asked.of(house(20)).finding(DUCT).remedies();
        assertEquals(
                "make the foam of bay.floor 8.5 mm thick at most, instead of 20 mm (12 mm would do as drawn)",
                remedies.get(0).says());
        assertEquals(List.of("runs.supply.layers[2].foam=7.2"), remedies.get(1).set());
    }

    /** Asked 28: 19.5 less leaves 0.5 of the shelf's 20, less than the third that makes sense; 3.2 of the wrap's 13 too. */
    @Test
    void noLiningIsThinnedToNothing() {
        List<Remedy> remedies = Asked.of(house(28)).finding(DUCT).remedies();
        assertEquals(
                List.of(List.of("runs.supply.path[1].high=220.5")),
                remedies.stream().map(Remedy::set).toList());
    }

    @Test
    void everyRemedyCures() {
        for (double asked : new double[] {12, 14.3, 20, 28}) {
            House house = house(asked);
            for (Remedy remedy : Asked.of(house).finding(DUCT).remedies()) {
                assertEquals(Verdict.PASSES, after(house, remedy).finding(DUCT).verdict(), remedy.says());
            }
        }
    }

    /**
     * A cooler 60 below a roof, 30 above a shelf, asked 20 above and 40 below: 10 too low and 40 to spare, so 50 from the roof.
     */
    @Test
    void unitMovesUpWhenThatAloneCures() {
        House house = hung(60);
        Finding finding = Asked.of(house).expect("fit.maker/units.cooler.clearance.bottom", 30, 40, -11, Verdict.FAILS);
        assertEquals(
                List.of(new Remedy(
                        "set cooler at top 49 mm instead of 60 mm (50 mm would do as drawn)",
                        List.of("units.cooler.at.top=49"))),
                finding.remedies());
    }

    /** The same cooler 25 below the roof: 11 up would leave 14 of the 20 asked above, so that is no remedy. */
    @Test
    void unitDoesNotMoveIntoAnotherDemand() {
        Finding finding = Asked.of(hung(25)).finding("fit.maker/units.cooler.clearance.bottom");
        assertEquals(Verdict.FAILS, finding.verdict());
        assertTrue(finding.remedies().isEmpty(), finding.remedies().toString());
    }

    private static House house(double askedMm) {
        return HandHouse.of(Tell.house().clearance(askedMm).done(), (scene, tape) -> {
            Stack rail = tape.read("fixtures.rail.at.floor", 300, 1);
            Stack shelf = tape.read("cavities.bay.floor.linings[1].foam", 20, 0.5);
            Stack top = shelf.plus(tape.exact("runs.supply.path[1].high", 240))
                    .plus(tape.exact("runs.supply.layers[1].galv", 1).times(2))
                    .plus(tape.read("runs.supply.layers[2].foam", 13, 1).times(2));
            scene.put(PartKind.FIXTURE, "fixtures.rail", "bay", Box.upright(200, 260, 0, 600, rail, rail.plus(80)))
                    .put(PartKind.DUCT, "runs.supply.path[1]", "bay", Box.upright(0, 900, 100, 500, shelf, top));
        });
    }

    /** The shelf is always 30 below the cooler's underside as drawn. */
    private static House hung(double fromRoofMm) {
        Map<String, Double> asked = Map.of("top", 20.0, "bottom", 40.0);
        return HandHouse.of(Tell.house().unit("cooler", 0, asked).done(), (scene, tape) -> {
            Stack roof = Stack.constant(2000);
            Stack top = roof.minus(tape.read("units.cooler.at.top", fromRoofMm, 1));
            Stack shelf = Stack.constant(2000 - fromRoofMm - 200 - 30);
            scene.put(PartKind.LINING, "cavities.loft.top", "loft", Box.upright(0, 900, 0, 900, roof, roof.plus(99)))
                    .put(
                            PartKind.FIXTURE,
                            "fixtures.shelf",
                            "loft",
                            Box.upright(0, 900, 0, 900, shelf.minus(18), shelf))
                    .put(PartKind.UNIT, "units.cooler", "loft", Box.upright(100, 550, 100, 800, top.minus(200), top));
        });
    }

    private static Asked after(House house, Remedy remedy) {
        String set = remedy.set().get(0);
        int equals = set.indexOf('=');
        double value = Double.parseDouble(set.substring(equals + 1));
        return Asked.of(((Resolved.Sound) house.with(Map.of(set.substring(0, equals), value))).house());
    }
}
