package org.spile.geometry.house.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;

/** Takeoffs from the flat side of a main 200 x 100 with walls of 0.6, laid 500 to 700 from the left of a loft 2000 wide. */
class TakeoffTest {
    private static final String LOFT = """
            cavities: {loft: {long: 3000, wide: 2000, high: 400}}
            terminals:
              a: {kind: grille, in: loft, face: rear, wide: 200, high: 100, at: {left: 500, floor: 100}}
              c: {kind: grille, in: loft, face: front, wide: 200, high: 100, at: {left: 500, floor: 100}}
              d: {kind: grille, in: loft, face: right, %s}
            runs:
              main: {from: a, to: c, layers: [{galv: 0.6}], path: [{forward: rest}]}
              side: {%s, layers: [{galv: 1}], path: %s}
            """;

    private static final String RECTANGLE = "wide: 150, high: 80, at: {rear: 1425, floor: 110}";
    private static final String ROUND = "round: 90, at: {rear: 1500, floor: 150}";

    private static List<DuctPiece> side(String grille, String ends, String path) {
        HouseResult result =
                HouseFile.houseText("house.yaml", LOFT.formatted(grille, ends, path), List.of(), List.of());
        return assertInstanceOf(HouseResult.Sound.class, result, result::toString).house().runs().stream()
                .filter(run -> run.id().equals("side"))
                .findFirst()
                .orElseThrow()
                .pieces();
    }

    /** The main's clear right side lies 700 from the left, so the branch is 1300 long, of which the wall's 0.6 is the collar. */
    @Test
    void rectangular_leaves() {
        List<DuctPiece> pieces = side(
                RECTANGLE,
                "from: {run: main, after: 1500, side: right}, to: d",
                "[{wide: 150, high: 80}, {right: rest}]");
        Takeoff takeoff = assertInstanceOf(Takeoff.class, pieces.get(0));
        assertEquals("runs.main", takeoff.run());
        assertEquals("right", takeoff.side());
        assertEquals(0.6, takeoff.lengthMm(), 1e-9);
        assertEquals(150 * 80, takeoff.clearAreaMm2(0.3), 1e-6);
        assertEquals(2 * (150 + 80), takeoff.wettedPerimeterMm(0.3), 1e-6);
        assertEquals(150 * 80, takeoff.least().areaMm2(), 1e-6);
        assertEquals(1300, pieces.get(pieces.size() - 1).endMm(), 1e-6);
        clearLiesInside(takeoff, 1300 * 152 * 82);
    }

    /** 90 round: pi 45^2; its outside has a radius of 46. */
    @Test
    void round_leaves() {
        List<DuctPiece> pieces =
                side(ROUND, "from: {run: main, after: 1500, side: right}, to: d", "[{round: 90}, {right: rest}]");
        Takeoff takeoff = assertInstanceOf(Takeoff.class, pieces.get(0));
        assertEquals(Math.PI * 45 * 45, takeoff.clearAreaMm2(0.6), 1e-6);
        assertEquals(Math.PI * 90, takeoff.wettedPerimeterMm(0), 1e-6);
        clearLiesInside(takeoff, Math.PI * 46 * 46 * 1300);
    }

    /** The other way round: the last 0.6 of a branch that joins. */
    @Test
    void round_joins() {
        List<DuctPiece> pieces = side(ROUND, "from: d, to: {run: main, after: 1500, side: right}", "[{left: rest}]");
        Takeoff takeoff = assertInstanceOf(Takeoff.class, pieces.get(pieces.size() - 1));
        assertEquals(1300, takeoff.endMm(), 1e-6);
        assertEquals(1299.4, takeoff.startMm(), 1e-6);
        assertEquals(Math.PI * 45 * 45, takeoff.least().areaMm2(), 1e-6);
    }

    /** From a shallow collar the branch widens in its next leg. */
    @Test
    void takeoff_asHighAsItsSide_widensAfterIt() {
        List<DuctPiece> pieces = side(
                "wide: 150, high: 160, at: {rear: 1425, floor: 70}",
                "from: {run: main, after: 1500, side: right}, to: d",
                "[{wide: 150, high: 100}, {right: 400}, {right: rest, high: 160}]");
        assertEquals(
                List.of("takeoff", "straight", "transition"),
                pieces.stream().map(DuctPiece::word).toList());
        assertEquals(150 * 100, pieces.get(0).least().areaMm2(), 1e-6);
        // Half-way through the transition it is 130 high.
        assertEquals(150 * 130, pieces.get(2).clearAreaMm2(pieces.get(2).lengthMm() / 2), 1e-6);
    }

    /** Its outside is as long and holds as much as it should, and every ring of its clear passage lies in it. */
    private static void clearLiesInside(Takeoff takeoff, double volumeMm3) {
        var box = takeoff.outside().bounds();
        assertEquals(1300, box.maxY() - box.minY(), 1e-6);
        double across = (box.maxX() - box.minX()) * (box.maxZ() - box.minZ());
        boolean round = takeoff.leg().start() instanceof Section.Round;
        assertEquals(volumeMm3, across * (round ? Math.PI / 4 : 1) * 1300, 1e-3);
        for (double at = 0; at <= takeoff.lengthMm(); at += 0.1) {
            for (Vector3D point : takeoff.clear().outline(at)) {
                assertTrue(Inside.outsideMm(takeoff.outside(), point) <= 1e-6, point.toString());
            }
        }
    }
}
