package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;

/** Sizes on the road and pipes that part; sums by hand. */
class RoadTest {
    private static final double EXACT = 1e-6;

    private static final String TWO = """
            trailers:
              bunk:
                long: 4000
                wide: 2400 ± 4
                ground: 600 ± 10
                roof: {profile: [{left: 0, up: 2200 ± 3}, {right: 0, up: 'as trailers.bunk.roof.profile[1].up'}], layers: [{ply: 12 ± 0}]}
                coupling: {front: 1200 ± 5 out}
              lab:
                long: 3000
                wide: 2300
                dock: {face: rear, to: bunk.rear, apart: 60}
            rooms:
              den: {in: bunk, at: {rear: 100, left: 100, right: 100}, long: 2000}
              bench: {in: lab, at: {rear: 100, left: 100, right: 100}, long: 2000}
            fixtures:
              tank: {in: bunk, kind: tank, long: 600, wide: 80 ± 2, high: 200, at: {rear: 300, left: 0 out, deck: 300 out}}
            terminals:
              here: {kind: grille, in: den, face: rear, round: 100, at: {left: 600, floor: 1000}}
              there: {kind: grille, in: bench, face: rear, round: 100, at: {right: 550, floor: 1000}}
            runs:
              link: {from: here, to: there, layers: [{pvc: 1}], path: [PATH]}
            limits: {road: {wide: 2550, high: 2800, long: 5200}}
            stances:
              parked: {lab: docked}
              moving: {lab: away, road: yes}
            """;

    /** 2400 ± 4 from edge to edge, and the tank 80 ± 2 wide beyond the left one: 2480 of 2550, 6 more at worst. */
    @Test
    void wide_countsWhatSticksOut() {
        Finding wide = find("road.wide/trailers.bunk", "{aft: 260, parts: cuff}");
        assertEquals(70, wide.margin().orElseThrow().number(), EXACT);
        assertEquals(64, wide.worst().orElseThrow().number(), EXACT);
        assertEquals(Verdict.PASSES, wide.verdict());
        assertEquals(List.of("moving"), wide.stance());
        assertTrue(wide.because().contains("2480 mm wide on the road, from the deck to tank"), wide.because());
    }

    /** 600 ± 10 to the deck, 2200 ± 3 to the bare roof, 12 of ply: 2812 of 2800. */
    @Test
    void high_countsFromTheRoad() {
        Finding high = find("road.high/trailers.bunk", "{aft: 260, parts: cuff}");
        assertEquals(-12, high.margin().orElseThrow().number(), EXACT);
        assertEquals(-25, high.worst().orElseThrow().number(), EXACT);
        assertEquals(Verdict.FAILS, high.verdict());
    }

    /** The deck's 4000 and the coupling 1200 ± 5 before it: 5200 of 5200, met with equality as drawn. */
    @Test
    void long_takesInTheCoupling() {
        Finding length = find("road.long/trailers.bunk", "{aft: 260, parts: cuff}");
        assertEquals(0, length.margin().orElseThrow().number(), EXACT);
        assertEquals(-5, length.worst().orElseThrow().number(), EXACT);
        assertEquals(Verdict.TIGHT, length.verdict());
    }

    @Test
    void high_isOpenWithoutTheHeightOfTheDeck() {
        Finding high = find("road.high/trailers.lab/trailers.lab.ground", "{aft: 260, parts: cuff}");
        assertEquals(Verdict.NOT_KNOWN, high.verdict());
        assertEquals(Optional.of("trailers.lab.ground"), high.against());
        assertEquals(List.of("moving"), high.stance());
    }

    /** 100 of bunk, 60 between, 100 of lab. */
    @Test
    void runThatPartsNowhere_failsOnTheRoad() {
        Finding parts = find("road.parts/runs.link", "{aft: 260}");
        assertEquals(Verdict.FAILS, parts.verdict());
        assertEquals(-60, parts.margin().orElseThrow().number(), EXACT);
        assertEquals(List.of("moving"), parts.stance());
        assertEquals(1, parts.remedies().size());
    }

    @Test
    void runThatParts_passes() {
        Finding parts = find("road.parts/runs.link", "{aft: 100}, {aft: 60, parts: cuff}, {aft: 100}");
        assertEquals(Verdict.PASSES, parts.verdict());
        assertTrue(parts.because().contains("runs.link.path[2]"), parts.because());
    }

    private static Finding find(String id, String path) {
        HouseResult result = HouseFile.houseText("house.yaml", TWO.replace("PATH", path), List.of(), List.of());
        House house = assertInstanceOf(HouseResult.Sound.class, result, result.toString())
                .house();
        List<Finding> findings = new Road().findings(house);
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " isn't among "
                        + findings.stream().map(Finding::id).toList()));
    }
}
