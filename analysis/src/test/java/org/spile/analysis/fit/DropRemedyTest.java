package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.kernel.measure.Stack;

/** How far a ceiling must drop, as drawn and at worst, and what stops it; check values by hand from {@link Lobby}. */
class DropRemedyTest {
    private static final String DROP = "cavities.lobby-top.ceiling.drop";

    /** 15 - 9 = 6 as drawn; 16.5 with everything against it (see StackUpTest). */
    @Test
    void saysBothLeastDrops() {
        List<Remedy> remedies = Asked.of(Lobby.house()).finding(Lobby.BOTTOM).remedies();
        assertEquals(
                List.of(new Remedy(
                        "lower the ceiling of lobby-top by 16.5 mm (6 mm would do as drawn)", List.of(DROP + "=16.5"))),
                remedies.subList(0, 1));
    }

    @Test
    void bothDropsAreTheLeast() {
        assertEquals(Verdict.FAILS, bottomAfter(5.9));
        assertEquals(Verdict.TIGHT, bottomAfter(6.0));
        assertEquals(Verdict.TIGHT, bottomAfter(16.4));
        assertEquals(Verdict.PASSES, bottomAfter(16.5));
    }

    @Test
    void nothingFailsAfterwards() {
        assertEquals(List.of(), Asked.of(changed(Lobby.house(), 16.5)).failing());
    }

    /** 1962 - 16.5 = 1945.5; 1950 asked: 4.5 too low. */
    @Test
    void headroomAsDrawnStopsIt() {
        Remedy remedy = first(Lobby.house(1950));
        assertEquals(List.of(), remedy.set());
        assertEquals(
                "not possible: to lower the ceiling of lobby-top by 16.5 mm (6 mm would do as drawn) would do, but then lobby"
                        + " is 1945.5 mm high at its lowest; 1950 mm asked: 4.5 mm short, 7.5 mm with every tolerance against"
                        + " it.",
                remedy.says());
    }

    /** 1945.5 ± 3 of ceiling; 1944 asked: enough as drawn, 1.5 short at worst, and so not offered. */
    @Test
    void headroomAtWorstStopsIt() {
        Remedy remedy = first(Lobby.house(1944));
        assertEquals(List.of(), remedy.set());
        assertTrue(remedy.says().contains("met as drawn, 1.5 mm short"), remedy.says());
    }

    /** 1945.5 - 3 = 1942.5 asked exactly: met, and so offered. */
    @Test
    void headroomMetWithEqualityDoesNotStopIt() {
        assertEquals(List.of(DROP + "=16.5"), first(Lobby.house(1942.5)).set());
    }

    /** A cabinet 1950 ± 1 high: the ceiling, 1962 ± 3, may come down 12 - 4 = 8 at worst; 16.5 - 8 = 8.5 too much. */
    @Test
    void cabinetBelowStopsIt() {
        BiConsumer<HandScene, Tape> plan = (scene, tape) -> {
            Lobby.lay(scene, tape);
            Stack top = tape.read("fixtures.cabinet.high", 1950, 1);
            scene.put(PartKind.FIXTURE, "fixtures.cabinet", "lobby", Box.upright(0, 600, 0, 400, Stack.ZERO, top));
        };
        Remedy remedy = first(HandHouse.of(Lobby.told(1930), plan));
        assertEquals(
                "not possible: lowering the ceiling of lobby-top by 16.5 mm would do, but from 8 mm on it is too near to"
                        + " cabinet, 8.5 mm too early",
                remedy.says());
        assertEquals(List.of(), remedy.set());
    }

    /** A cabinet 1940 ± 1 high is 22 - 4 = 18 below at worst, more than the 16.5 needed. */
    @Test
    void lowerCabinetDoesNotStopIt() {
        BiConsumer<HandScene, Tape> plan = (scene, tape) -> {
            Lobby.lay(scene, tape);
            Stack top = tape.read("fixtures.cabinet.high", 1940, 1);
            scene.put(PartKind.FIXTURE, "fixtures.cabinet", "lobby", Box.upright(0, 600, 0, 400, Stack.ZERO, top));
        };
        assertEquals(
                List.of(DROP + "=16.5"),
                first(HandHouse.of(Lobby.told(1930), plan)).set());
    }

    /** A drop of 10 is there already: 6.5 more, to 16.5. */
    @Test
    void addsToADropThatIsThere() {
        House lowered = changed(Lobby.house(), 10);
        Remedy remedy = first(lowered);
        assertEquals(List.of(DROP + "=16.5"), remedy.set());
        assertEquals("lower the ceiling of lobby-top by 6.5 mm, to a drop of 16.5 mm", remedy.says());
    }

    private static Remedy first(House house) {
        return Asked.of(house).finding(Lobby.BOTTOM).remedies().get(0);
    }

    private static Verdict bottomAfter(double dropMm) {
        return Asked.of(changed(Lobby.house(), dropMm)).finding(Lobby.BOTTOM).verdict();
    }

    private static House changed(House house, double dropMm) {
        return ((Resolved.Sound) house.with(Map.of(DROP, dropMm))).house();
    }
}
