package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctPiece;
import org.spile.geometry.house.duct.DuctRun;

/** Profiles of the samples, worked by hand from their files. */
class AreaProfileTest {
    private static House sample(String name) {
        Path file = Path.of(System.getProperty("spile.root"), "samples", name, "house.yaml");
        HouseResult result = HouseFile.house(file, List.of(), List.of());
        return assertSound(result);
    }

    private static House assertSound(HouseResult result) {
        assertTrue(result instanceof HouseResult.Sound, () -> "not sound: " + result);
        return ((HouseResult.Sound) result).house();
    }

    private static AreaProfile profile(House house, String id) {
        return AreaProfile.of(house.runs().stream()
                .filter(run -> run.id().equals(id))
                .findFirst()
                .orElseThrow());
    }

    /** 300 x 25, but 240 x 25 past the rail's bracket: 7500 and 6000 mm2; half-way through the 110 long transition 270 x 25. */
    @Test
    void saltmarshToiletDuct_isPinchedAtTheRail() {
        AreaProfile profile = profile(sample("saltmarsh"), "toilet-flat");
        Pinch pinch = profile.least();
        assertEquals(List.of(pinch), profile.pinches());
        assertEquals(6000, pinch.areaMm2(), 1e-6);
        assertEquals("runs.toilet-flat.path[4]", pinch.path());
        assertEquals("runs.toilet-flat.path[5]", pinch.leg());
        assertEquals(100, pinch.toMm() - pinch.fromMm(), 1e-6);
        assertEquals("its 240 mm width", pinch.by());
        assertEquals(270 * 25, profile.at(pinch.fromMm() - 55).areaMm2(), 1e-6);
        assertEquals(7500, profile.at(500).areaMm2(), 1e-6);
        // 4 x 7500 / 650.
        assertEquals(46.153846, profile.at(500).hydraulicMm(), 1e-6);
        assertEquals(12, profile.at(500).aspect(), 1e-9);
    }

    /** 300 x 70 at the foot of a slant of 52 in 260: 21000 x 260 / sqrt(2602 + 522) = 20592.19. */
    @Test
    void saltmarshLabSupply_isLeastWhereItSlantsIntoTheFlat() {
        AreaProfile profile = profile(sample("saltmarsh"), "lab-supply");
        assertEquals(20_592.194, profile.least().areaMm2(), 1e-3);
        assertEquals(240 * 90, profile.at(100).areaMm2(), 1e-6);
        assertEquals(21_000, profile.at(1080).areaMm2(), 1e-6);
        assertEquals(1, profile.pinches().size());
    }

    /** Half-way from 24 x 5 to 20 x 6 inches: 22 x 5.5; both ends have 120 square inches. */
    @Test
    void siteCabin_inInches() {
        AreaProfile profile = profile(sample("site-cabin"), "desk");
        double inch2 = 25.4 * 25.4;
        PieceArea transition = profile.pieces().get(1);
        assertEquals(120 * inch2, profile.at(50).areaMm2(), 1e-6);
        assertEquals(120 * inch2, profile.at(profile.lengthMm()).areaMm2(), 1e-6);
        double middle = (transition.fromMm() + transition.toMm()) / 2;
        assertEquals(22 * 5.5 * inch2, profile.at(middle).areaMm2(), 1e-6);
        assertEquals(6 * 25.4, profile.least().toMm(), 1e-6);
    }

    /**
     * 200 x 100 round a corner: the mitre is 282.8 long, so 7 vanes 40 apart, 7 x 0.6 x 100 = 420; 600 round with screws 150
     * apart makes 4, 4 x 4.2 x 10 = 168.
     */
    @Test
    void vanesAndScrews_asTheFileSays() {
        String text = """
                cavities: {loft: {long: 3000, wide: 2000, high: 400}}
                units:
                  box: {at: {rear: 100, left: 800, top: 50}, blows: forward, long: 300, wide: 300, high: 200,
                    spigots: {out: {face: front, wide: 200, high: 100}}}
                terminals:
                  grille: {kind: grille, in: loft, face: left, wide: 200, high: 100, at: {rear: 1000, ceiling: 200}}
                runs:
                  main: {from: box.out, to: grille, layers: [{galv: 0.6}], bends: vanes, vanes: {apart: 40},
                    screws: {tip: 10}, path: [{forward: rest}, {left: rest}]}
                """;
        Pinch pinch = profile(assertSound(HouseFile.houseText("house.yaml", text, List.of(), List.of())), "main")
                .least();
        assertEquals(20_000 - 420 - 168, pinch.areaMm2(), 1e-6);
        assertEquals("7 vanes and 4 screw tips", pinch.by());
    }

    /** A run with every kind of piece, sizes by name. */
    private static AreaProfile mixed(String head, double unit, boolean swapped) {
        String main = """
                main: {from: box.out, to: grille, layers: [{galv: %7$s}], path: [{forward: %5$s, wide: %4$s},
                    {forward: %4$s, up: %3$s, slant: yes}, {forward: rest, round: %6$s},
                    {left: %5$s, bend: radius %11$s}, {left: rest}],
                    screws: {tip: %8$s, thick: %9$s, apart: %10$s}}
                """;
        String other = """
                other: {from: c, to: d, layers: [{galv: %7$s}], path: [{forward: rest}]}
                """;
        String things = """
                cavities: {loft: {long: %12$s, wide: %13$s, high: %14$s}}
                units:
                  box: {at: {rear: %1$s, left: %2$s, top: %3$s}, blows: forward, long: %4$s, wide: %4$s, high: %5$s,
                    spigots: {out: {face: front, wide: %5$s, high: %6$s}}}
                terminals:
                  grille: {kind: grille, in: loft, face: left, round: %6$s, at: {rear: %15$s, ceiling: %16$s}}
                  c: {kind: grille, in: loft, face: rear, wide: %6$s, high: %6$s, at: {left: %6$s, floor: %6$s}}
                  d: {kind: grille, in: loft, face: front, wide: %6$s, high: %6$s, at: {left: %6$s, floor: %6$s}}
                runs:
                """;
        String text = head + things + (swapped ? other + main : main + other).indent(2);
        double[] mm = {100, 1500, 200, 300, 200, 100, 0.6, 10, 4.2, 150, 120, 5000, 3000, 700, 1800, 600};
        Object[] sizes =
                Arrays.stream(mm).mapToObj(size -> Double.toString(size / unit)).toArray();
        return profile(
                assertSound(HouseFile.houseText("house.yaml", text.formatted(sizes), List.of(), List.of())), "main");
    }

    @Test
    void inches_andTheOrderOfTheFile_giveTheSameAreas() {
        AreaProfile metric = mixed("", 1, false);
        assertTrue(metric.pieces().size() > 5, metric.pieces().toString());
        assertEquals(metric.breakpoints(), mixed("", 1, true).breakpoints());
        List<AreaStation> inches = mixed("lengths: in\n", 25.4, false).breakpoints();
        assertEquals(metric.breakpoints().size(), inches.size());
        for (int i = 0; i < inches.size(); i++) {
            AreaStation mm = metric.breakpoints().get(i);
            assertEquals(mm.areaMm2(), inches.get(i).areaMm2(), 1e-9 * mm.areaMm2());
            assertEquals(mm.perimeterMm(), inches.get(i).perimeterMm(), 1e-9 * mm.perimeterMm());
            assertEquals(mm.atMm(), inches.get(i).atMm(), 1e-6);
        }
    }

    @Test
    void piecesFollowEachOtherWithoutGap_toTheRunsEnd() {
        for (DuctRun run : sample("saltmarsh").runs()) {
            double at = 0;
            for (DuctPiece piece : run.pieces()) {
                assertEquals(at, piece.startMm(), 1e-6, piece.path());
                at = piece.endMm();
            }
            assertEquals(run.lengthMm(), at, 1e-6, run.path());
        }
    }

    /** What is clear lies within the outside: every ring of every sample's piece lies in its bounds. */
    @Test
    void passagesLieWithinTheirOutsides() {
        for (DuctRun run : sample("saltmarsh").runs()) {
            for (DuctPiece piece : run.pieces()) {
                var box = piece.outside().bounds().grown(1e-6);
                for (double share = 0; share <= 1; share += 0.125) {
                    for (var point : piece.clear().outline(share * piece.lengthMm())) {
                        assertTrue(
                                point.getX() >= box.minX()
                                        && point.getX() <= box.maxX()
                                        && point.getY() >= box.minY()
                                        && point.getY() <= box.maxY()
                                        && point.getZ() >= box.minZ()
                                        && point.getZ() <= box.maxZ(),
                                piece.path() + " at " + share + ": " + point);
                    }
                }
            }
        }
    }
}
