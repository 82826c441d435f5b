package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** Service rooms, hands, headroom, doors and what sticks out, on rooms of a few boxes reckoned by hand. */
class RoomChecksTest {
    private static final Stack ZERO = Stack.ZERO;
    private static final String ELECTRIC = "units.cooler.service.electric";

    /** The electric side is 230 deep; a cabinet stands 260 ± 4 from the unit: 30 beyond the room, 26 at worst. */
    @Test
    void emptyServiceRoomPasses() {
        Asked asked = Asked.of(served(260));
        asked.expect("fit.service/" + ELECTRIC, 30, 0, 26, Verdict.PASSES);
        asked.expect("fit.hand/" + ELECTRIC, 260, 95, 161, Verdict.PASSES);
    }

    /** At 232 ± 4 it may stand in the room; at 90 ± 4 it does, and no hand (95) gets in. */
    @Test
    void serviceRoomMustBeEmpty() {
        Asked.of(served(232)).expect("fit.service/" + ELECTRIC, 2, 0, -2, Verdict.TIGHT);
        Asked asked = Asked.of(served(90));
        asked.expect("fit.service/" + ELECTRIC, -140, 0, -144, Verdict.FAILS);
        asked.expect("fit.hand/" + ELECTRIC, 90, 95, -9, Verdict.FAILS);
    }

    /** A duct at 1900 ± 5 hangs lower than the 2100 ceiling; 1930 asked: -30, -35. Over the bench it may. */
    @Test
    void ductsMayNotHangInTheWayOfAHead() {
        Asked.of(under(1000)).expect("fit.headroom/rooms.lobby", 1900, 1930, -35, Verdict.FAILS);
        Asked.of(under(0)).expect("fit.headroom/rooms.lobby", 2100, 1930, 170, Verdict.PASSES);
    }

    /** Nobody said what headroom they want: the least of a published code stands in and is named. */
    @Test
    void citedHeadroomIsNamed() {
        ToldHouse told = Tell.house().done();
        House house = HandHouse.of(
                told,
                (scene, tape) -> scene.room(
                        new FlatRoom("lobby", Outline.rectangle(0, 0, 2000, 2000), ZERO, Stack.constant(1940))));
        Finding finding = Asked.of(house).expect("fit.headroom/rooms.lobby", 1940, 1930, 10, Verdict.PASSES);
        assertTrue(finding.source().startsWith("published: model residential code"), finding.source());
        assertEquals(java.util.List.of("limits.headroom"), finding.restsOn());
    }

    /** A leaf 1850 ± 2 high opens under a ceiling at 1857 ± 3: 7, asked 5: +2, -3; where it can't swing, 1840 is no matter. */
    @Test
    void doorPassesUnderItsCeiling() {
        House house = HandHouse.of(Tell.house().door("lobby", "entry").done(), (scene, tape) -> {
            Stack head = tape.read("rooms.lobby.openings.entry.at.floor[2]", 1850, 2);
            Stack ceiling = tape.read("cavities.near.ceiling.at", 1857, 3);
            scene.put(PartKind.MOVER, "rooms.lobby.openings.entry", "lobby", Box.upright(0, 40, 500, 1200, ZERO, head))
                    .put(
                            PartKind.LINING,
                            "cavities.near.ceiling",
                            "near",
                            Box.upright(300, 1500, 0, 2000, ceiling, ceiling.plus(12)))
                    .put(
                            PartKind.LINING,
                            "cavities.far.ceiling",
                            "far",
                            Box.upright(1500, 3000, 0, 2000, Stack.constant(1840), Stack.constant(1852)));
        });
        Asked.of(house).expect("fit.door/rooms.lobby.openings.entry", 7, 5, -3, Verdict.TIGHT);
    }

    /** A unit that ends 35 ± 1 beyond its cavity's edge at 600. */
    @Test
    void whatSticksOutOfItsCavityIsTold() {
        House house = HandHouse.of(Tell.house().unit("cooler", 0, Map.of()).done(), (scene, tape) -> {
            Stack front = tape.read("units.cooler.at.front", 635, 1);
            scene.put(
                            PartKind.UNIT,
                            "units.cooler",
                            "loft",
                            new Box(ZERO.plus(100), front, ZERO.plus(50), ZERO.plus(350), ZERO.plus(10), ZERO.plus(60)))
                    .cavity(new FlatCavity("loft", Outline.rectangle(0, 0, 600, 400), ZERO, ZERO.plus(90), false, ""));
        });
        Asked.of(house).expect("fit.inside/units.cooler/cavities.loft", -35, 0, -36, Verdict.FAILS);
    }

    /** Linings of 30 and 25 in a cavity of 50 overlap by 5. */
    @Test
    void liningsThatFillACavityFail() {
        House house = HandHouse.of(Tell.house().done(), (scene, tape) -> {
            Stack floor = tape.read("cavities.loft.floor.linings[1].ply", 30, 1);
            Stack roof =
                    tape.exact("cavities.loft.high", 50).minus(tape.read("cavities.loft.top.linings[1].pir", 25, 2));
            scene.cavity(new FlatCavity("loft", Outline.rectangle(0, 0, 600, 400), floor, roof, false, ""));
        });
        Finding finding = Asked.of(house).expect("fit.depth/cavities.loft", -5, 0, -8, Verdict.FAILS);
        assertTrue(finding.because().startsWith("the linings of loft overlap by 5 mm"), finding.because());
    }

    /** Two things that may touch at 0, and cut 3 into each other: told; touching itself isn't. */
    @Test
    void tiedThingsMayTouchButNotOverlap() {
        assertEquals(Map.of(), Asked.of(tied(0, false)).all());
        Asked.of(tied(-3, false)).expect("fit.clearance/runs.supply/fixtures.hanger", -3, 0, -3, Verdict.FAILS);
        assertEquals(Map.of(), Asked.of(tied(-3, true)).all());
    }

    /** A line far from everything still has an answer: the nearest thing is 900 away. */
    @Test
    void everyThingHasItsNearest() {
        House house = HandHouse.of(
                Tell.house().done(),
                (scene, tape) -> scene.put(
                                PartKind.LINE,
                                "lines.cable.path[1]",
                                "",
                                Box.upright(0, 10, 0, 10, ZERO, ZERO.plus(10)))
                        .put(PartKind.FIXTURE, "fixtures.near", "", Box.upright(910, 950, 0, 10, ZERO, ZERO.plus(10)))
                        .put(
                                PartKind.FIXTURE,
                                "fixtures.far",
                                "",
                                Box.upright(2000, 2100, 0, 10, ZERO, ZERO.plus(10))));
        Asked.of(house).expect("fit.clearance/lines.cable/fixtures.near", 900, 5, 895, Verdict.PASSES);
    }

    private static House tied(double gapMm, boolean overlaps) {
        return HandHouse.of(
                Tell.house().done(),
                (scene, tape) -> scene.put(
                                PartKind.DUCT,
                                "runs.supply.path[1]",
                                "",
                                Box.upright(0, 500, 0, 200, ZERO, ZERO.plus(80)))
                        .put(
                                PartKind.FIXTURE,
                                "fixtures.hanger",
                                "",
                                Box.upright(100, 140, 0, 200, ZERO.plus(80 + gapMm), ZERO.plus(150)))
                        .tie("runs.supply.path[1]", "fixtures.hanger", overlaps));
    }

    private static House served(double cabinetMm) {
        return HandHouse.of(
                Tell.house().clearance(5).served("cooler", "electric", "front").done(), (scene, tape) -> {
                    Stack cabinet = tape.read("fixtures.cabinet.at.rear", 450 + cabinetMm, 4);
                    scene.put(
                                    PartKind.UNIT,
                                    "units.cooler",
                                    "",
                                    Box.upright(0, 450, 0, 700, ZERO.plus(100), ZERO.plus(300)))
                            .put(
                                    PartKind.SERVICE,
                                    ELECTRIC,
                                    "",
                                    Box.upright(450, 680, 100, 380, ZERO.plus(100), ZERO.plus(300)))
                            .put(
                                    PartKind.FIXTURE,
                                    "fixtures.cabinet",
                                    "",
                                    new Box(cabinet, cabinet.plus(300), ZERO, ZERO.plus(700), ZERO, ZERO.plus(400)));
                });
    }

    private static House under(double benchFromMm) {
        return HandHouse.of(Tell.house().room("lobby", 1930).done(), (scene, tape) -> {
            Stack duct = tape.read("runs.supply.path[1].at.floor", 1900, 5);
            scene.room(new FlatRoom("lobby", Outline.rectangle(0, 0, 2000, 2000), ZERO, Stack.constant(2100)))
                    .put(
                            PartKind.DUCT,
                            "runs.supply.path[1]",
                            "lobby",
                            Box.upright(0, 500, 0, 500, duct, duct.plus(90)))
                    .put(
                            PartKind.FIXTURE,
                            "fixtures.bench",
                            "lobby",
                            Box.upright(benchFromMm, benchFromMm + 600, 0, 600, ZERO, ZERO.plus(910)));
        });
    }
}
