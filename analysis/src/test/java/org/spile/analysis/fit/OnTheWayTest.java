package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.finding.Where;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;

/** Things on their way, in houses small enough to reckon by hand. */
class OnTheWayTest {
    private static final double EXACT = 1e-6;
    private static final double SHOWN = 0.01;

    private static final String DEN = """
            trailers: {van: {long: 4000, wide: 2400}}
            rooms:
              den: {in: van, at: {rear: 100, left: 100, right: 100}, long: 3000, ceiling: 2100OPENINGS}
            fixtures: {FIXTURES}
            movers: {MOVERS}
            STANCES
            """;

    /**
     * A leaf 700 wide and 40 thick in the rear wall, pinned at its right edge in the face it opens to. A cabinet stands 760
     * before that face. Open at 90 degrees the leaf reaches 700; a little further its thickness takes the far corner out to
     * hypot(700, 40) = 701.14, at 90 and the angle of that corner.
     */
    @Test
    void door_isHeldAgainstFurnitureAllTheWay() {
        Finding door = find(
                ", openings: {entry: {face: rear, at: {right: 600..1300, floor: 0..1900}, hinge: {edge: right, opens: forward, by: 100 deg}}}",
                "chest: {in: den, kind: cabinet, long: 400, wide: 500, high: 900, at: {rear: 760, right: 400, floor: 100}}",
                "",
                "",
                "travel.mover/rooms.den.openings.entry");
        assertEquals(760 - Math.hypot(700, 40), door.value().orElseThrow().number(), SHOWN);
        assertEquals(Verdict.PASSES, door.verdict());
        Where where = door.where().orElseThrow();
        assertEquals(90 + Math.toDegrees(Math.atan2(40, 700)), where.position().number(), 0.6);
        assertEquals("deg", where.position().unit());
    }

    /** 703 before the pin's face, 5 asked: 700 sin of the angle may reach 698, at 85.66 degrees; 85.6 is offered and holds. */
    @Test
    void remedy_isTheLongestWayThatPasses() {
        String doors =
                ", openings: {entry: {face: rear, at: {right: 600..1300, floor: 0..1900}, hinge: {edge: right, opens: forward, by: BY}}}";
        String chest =
                "chest: {in: den, kind: cabinet, long: 400, wide: 500, high: 900, at: {rear: 703, right: 400, floor: 100}}";
        String id = "travel.mover/rooms.den.openings.entry";
        Finding fails = find(doors.replace("BY", "90 deg"), chest, "", "", id);
        assertEquals(Verdict.FAILS, fails.verdict());
        assertEquals(1, fails.remedies().size());
        assertEquals(
                List.of("rooms.den.openings.entry.hinge.by=85.6 deg"),
                fails.remedies().get(0).set());
        assertEquals(
                Verdict.PASSES,
                find(doors.replace("BY", "85.6 deg"), chest, "", "", id).verdict());
        assertEquals(
                Verdict.FAILS,
                find(doors.replace("BY", "85.8 deg"), chest, "", "", id).verdict());
    }

    /** What is too near where it stands can go nowhere. */
    @Test
    void nothingIsOffered_whereTheStartIsTooNear() {
        Finding tray = find(
                "",
                "rail: {in: den, kind: rail, long: 60, wide: 2000, high: 50, at: {rear: 300, y: 0, floor: 0}}",
                "tray: {in: den, long: 400, wide: 400, high: 100, at: {rear: 200, y: 0, floor: 52}, slides: {forward: 2000}}",
                "",
                "travel.mover/movers.tray");
        assertEquals(Verdict.FAILS, tray.verdict());
        assertEquals(List.of(), tray.remedies());
    }

    /** The drawer's way is blocked by the shut flap and free by the open one, whichever the file names first. */
    @Test
    void drawerBehindAFlap_goesSecond() {
        String drawer =
                "drawer: {in: den, long: 500, wide: 400, high: 200, at: {rear: 500, right: 0, floor: 200}, slides: {left: 300}}";
        String flap =
                "flap: {in: den, long: 520, wide: 20, high: 220, at: {rear: 490, right: 410, floor: 160}, hinge: {edge: bottom, opens: left}}";
        for (String movers : List.of(drawer + ", " + flap, flap + ", " + drawer)) {
            List<Finding> findings = findings("", "", movers, "stances: {shut: {}, used: {drawer: 300, flap: open}}");
            Finding moved = one(findings, "travel.mover/movers.drawer");
            assertEquals(Verdict.PASSES, moved.verdict());
            assertTrue(moved.because().contains("once flap has moved"), moved.because());
            // Open, the flap lies 20 thick over its pin at 160; the drawer's bottom is at 200.
            assertEquals(20, moved.value().orElseThrow().number(), EXACT);
            assertEquals(List.of("used"), moved.stance());
        }
    }

    /** With the flap left shut there is no order that helps: 300 out, 10 of them free, then 290 into the flap's place. */
    @Test
    void drawerBehindAShutFlap_fails() {
        Finding moved = find(
                "",
                "",
                "drawer: {in: den, long: 500, wide: 400, high: 200, at: {rear: 500, right: 0, floor: 200}, slides: {left: 300}}, "
                        + "flap: {in: den, long: 520, wide: 20, high: 220, at: {rear: 490, right: 410, floor: 160}, hinge: {edge: bottom, opens: left}}",
                "stances: {shut: {}, used: {drawer: 300}}",
                "travel.mover/movers.drawer");
        assertEquals(Verdict.FAILS, moved.verdict());
        assertTrue(moved.value().orElseThrow().number() < -20 + EXACT, moved.because());
        assertEquals("movers.flap", moved.against().orElseThrow());
    }

    /** A tray slides 8 ± 1 above a rail 50 ± 2 high: 8 left, 5 asked, 3 at worst short of nothing: margin 3, worst 0. */
    @Test
    void tolerancesCountWhereItIsNearest() {
        Finding tray = find(
                "",
                "rail: {in: den, kind: rail, long: 60, wide: 2000, high: 50 ± 2, at: {rear: 1500, y: 0, floor: 0}}",
                "tray: {in: den, long: 400, wide: 400, high: 100, at: {rear: 200, y: 0, floor: 58 ± 1}, slides: {forward: 2000}}",
                "",
                "travel.mover/movers.tray");
        assertEquals(3, tray.margin().orElseThrow().number(), EXACT);
        assertEquals(0, tray.worst().orElseThrow().number(), EXACT);
        double at = tray.where().orElseThrow().position().number();
        // Over the rail: its front passes 1500 after 900, its rear leaves 1560 after 1360.
        assertTrue(at >= 900 - EXACT && at <= 1360 + EXACT, "at " + at);
    }

    /** What rides is carried: the lid on the tray strikes the shelf that the tray passes under. */
    @Test
    void ridersCome() {
        Finding tray = find(
                "",
                "shelf: {in: den, kind: shelf, long: 300, wide: 800, high: 20, at: {rear: 1500, y: 0, floor: 170}}",
                "tray: {in: den, long: 400, wide: 400, high: 100, at: {rear: 200, y: 0, floor: 50}, slides: {forward: 2000}}, "
                        + "lid: {in: den, long: 400, wide: 400, high: 25, at: {rear: 200, y: 0, floor: 150}, hinge: {edge: rear, opens: up}, rides: tray}",
                "",
                "travel.mover/movers.tray");
        assertEquals(Verdict.FAILS, tray.verdict());
        assertEquals(-5, tray.value().orElseThrow().number(), EXACT);
        assertTrue(tray.because().contains("(lid)"), tray.because());
    }

    private static Finding find(String openings, String fixtures, String movers, String stances, String id) {
        return one(findings(openings, fixtures, movers, stances), id);
    }

    private static Finding one(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " isn't among "
                        + findings.stream().map(Finding::id).toList()));
    }

    private static List<Finding> findings(String openings, String fixtures, String movers, String stances) {
        String text = DEN.replace("OPENINGS", openings)
                .replace("FIXTURES", fixtures)
                .replace("MOVERS", movers)
                .replace("STANCES", stances);
        HouseResult result = HouseFile.houseText("house.yaml", text, List.of(), List.of());
        House house = assertInstanceOf(HouseResult.Sound.class, result, result.toString())
                .house();
        return new OnTheWay().findings(house);
    }
}
