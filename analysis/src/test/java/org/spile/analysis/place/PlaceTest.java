package org.spile.analysis.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.kernel.planar.Outline;

/** Maps of a unit in a plain box of a cavity, worked by hand. */
class PlaceTest {
    private static final double EXACT = 1e-6;

    private static final String LOFT = """
            rooms: {den: {long: 1650, wide: 900, ceiling: 2268, headroom: 1900}}
            cavities: {loft: {over: den, ceiling: {at: 2000, linings: [{ply: 6 ± 0}]}}}
            fixtures: {FIXTURES}
            units: {cooler: {long: 450, wide: 700, high: 200, at: {top: 20}, clearance: {top: 15, bottom: BOTTOM}}}
            limits: {clearance: 5}
            """;

    /** 5 round everything: x from 225 + 5 to 1650 - 230, 1190 wide; y 900 - 700 - 10 = 190. Turned: 940 by 440. */
    @Test
    void bareCavity() {
        PlaceAnswer answer = answer("", "10");
        assertTrue(answer.fits());
        assertTrue(answer.fitsNow());
        assertEquals(1190 * 190, areaMm2(answer, 0), EXACT);
        assertEquals(940 * 440, areaMm2(answer, 1), EXACT);
        assertEquals(1190 * 190, areaMm2(answer, 2), EXACT);
        assertEquals(95, answer.maps().get(0).roomMm(), 0.02);
        assertEquals(2148, answer.maps().get(0).best().orElseThrow().getZ(), EXACT);
    }

    /** A post of 100 from side to side at 700 to 800 parts the plan: 700 - 460 = 240 on one side, 850 - 460 = 390 beyond. */
    @Test
    void postAcross_partsTheMap() {
        PlaceAnswer answer = answer(
                "post: {in: loft, kind: beam, long: 100, wide: 900, high: 262, at: {rear: 700, left: 0, top: 0}}",
                "10");
        assertEquals(2, answer.maps().get(0).free().areas().size());
        assertEquals((240 + 390) * 190, areaMm2(answer, 0), EXACT);
    }

    /** Between posts 460 apart there is exactly its 450 and 5 on either side: a line of places 190 long, no area. */
    @Test
    void slotOfExactlyItsWidth_isALine() {
        PlaceAnswer answer = answer(
                "one: {in: loft, kind: beam, long: 590, wide: 900, high: 262, at: {rear: 0, left: 0, top: 0}}, "
                        + "two: {in: loft, kind: beam, long: 600, wide: 900, high: 262, at: {rear: 1050, left: 0, top: 0}}",
                "10");
        assertEquals(0, areaMm2(answer, 0), EXACT);
        assertFalse(answer.maps().get(0).free().isEmpty());
        assertEquals(1, answer.maps().get(0).free().lines().size());
    }

    /** 268 - 6 - 20 - 200 = 42 below; 50 asked: 8 short, and a ceiling 8 lower opens all of it. */
    @Test
    void noPlace_isExplained() {
        PlaceAnswer answer = answer("", "50");
        assertFalse(answer.fits());
        NoPlace none = answer.empty().orElseThrow();
        assertEquals(
                "units.cooler.clearance.bottom",
                none.governing().orElseThrow().limit().id().split("/", 2)[1]);
        assertEquals(8, none.governing().orElseThrow().yieldMm().orElseThrow(), EXACT);
        NoPlace.Lever drop = none.levers().get(0);
        assertEquals("cavities.loft.ceiling.drop=8", drop.set().orElseThrow());
        assertEquals(2 * 1190 * 190 + 2 * 940 * 440, drop.areaMm2(), 1);
    }

    /** 1900 long in 1650: however it is turned it is 250 and more too large. */
    @Test
    void unitLargerThanItsCavity_hasNoPlace() {
        HouseResult result = HouseFile.houseText(
                "house.yaml",
                LOFT.replace("FIXTURES", "").replace("BOTTOM", "10"),
                List.of(),
                List.of("units.cooler.long=1900"));
        PlaceAnswer answer = answer(result);
        assertFalse(answer.fits());
        assertEquals(250, answer.empty().orElseThrow().tooLargeMm(), EXACT);
    }

    private static double areaMm2(PlaceAnswer answer, int map) {
        return answer.maps().get(map).free().areas().stream()
                .mapToDouble(Outline::areaMm2)
                .sum();
    }

    private static PlaceAnswer answer(String fixtures, String bottom) {
        String text = LOFT.replace("FIXTURES", fixtures).replace("BOTTOM", bottom);
        return answer(HouseFile.houseText("house.yaml", text, List.of(), List.of()));
    }

    private static PlaceAnswer answer(HouseResult result) {
        HouseResult.Sound sound = assertInstanceOf(HouseResult.Sound.class, result, result.toString());
        return Place.of(sound.house(), "cooler", Place.QUARTER_TURNS).orElseThrow();
    }
}
