package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/**
 * Stack-ups worked by hand: body, lining, insulation and gap, each as drawn and with every tolerance against it.
 *
 * <p>The sums in the comments are the check values; each is elementary arithmetic on the readings stated there. Where a
 * tolerance is a published one, its table is named.
 */
class StackUpTest {
    private static final Stack ZERO = Stack.ZERO;

    /**
     * roof 2244 ± 3, less 48 ± 2 to the top, less 200 ± 1 of body = 1996; battens' face 1962 ± 3 + 6 ± 0.5 + 19 ± 1 = 1987.
     * Gap 9, asked 15: -6. Against it: 3 + 2 + 1 + 3 + 0.5 + 1 = 10.5, so -16.5.
     * Likely the root of 9 + 4 + 1 + 9 + 0.25 + 1, 4.92.
     */
    @Test
    void coolerHangsTooLowOverItsBattens() {
        Finding finding = Asked.of(Lobby.house()).expect(Lobby.BOTTOM, 9, 15, -16.5, Verdict.FAILS);
        assertEquals(
                "9 mm between the bottom of cooler and ceiling of lobby-top; 15 mm asked: 6 mm short,"
                        + " 16.5 mm with every tolerance against it, likely 10.92 mm short.",
                finding.because());
        assertEquals("maker's, house file: units.cooler.clearance.bottom", finding.source());
        assertEquals(9, finding.at().orElseThrow().distance(finding.to().orElseThrow()), 1e-6);
        assertEquals(1996, finding.at().orElseThrow().getZ(), 1e-6);
    }

    /** The same stack layer by layer: what opens the gap counts +1, what fills it -1. */
    @Test
    void stackOfTheCoolersGapHasEveryReading() {
        Finding finding = Asked.of(Lobby.house()).finding(Lobby.BOTTOM);
        Map<String, Double> factors =
                finding.stack().stream().collect(java.util.stream.Collectors.toMap(Layer::label, Layer::factor));
        assertEquals(
                Map.of(
                        "trailers.bunk.roof.profile[2].up", 1.0,
                        "units.cooler.at.top", -1.0,
                        "units.cooler.high", -1.0,
                        "cavities.lobby-top.ceiling.at", -1.0,
                        "cavities.lobby-top.ceiling.drop", 1.0,
                        "cavities.lobby-top.ceiling.linings[2].ply", -1.0,
                        "cavities.lobby-top.ceiling.linings[1].batten", -1.0),
                factors);
        double sum = finding.stack().stream()
                .mapToDouble(layer -> layer.factor() * layer.size().number())
                .sum();
        assertEquals(9, sum, 1e-9);
    }

    /** Above: 48 ± 2 less 25 ± 1 of insulation = 23, asked 20: +3. The roof moves both and drops out: 3 - 2 - 1 = 0, met. */
    @Test
    void roofDropsOutOfTheGapBetweenTwoThingsThatHangFromIt() {
        Finding finding = Asked.of(Lobby.house()).expect(Lobby.TOP, 23, 20, 0, Verdict.PASSES);
        assertTrue(finding.stack().stream().noneMatch(layer -> layer.label().contains("roof")), "roof cancels");
    }

    /** Void: 2244 ± 3 - 25 ± 1 - (1962 ± 3 + 6 ± 0.5 + 19 ± 1) = 232, asked 230: +2; less 8.5: -6.5. */
    @Test
    void makersVoidIsTight() {
        Asked.of(Lobby.house()).expect(Lobby.VOID, 232, 230, -6.5, Verdict.TIGHT);
    }

    /** Standing height 1962 ± 3, asked 1930: +32, at worst +29. */
    @Test
    void lobbyStandsHighEnough() {
        Asked.of(Lobby.house()).expect(Lobby.HEADROOM, 1962, 1930, 29, Verdict.PASSES);
    }

    /** House of five lines, no tolerance: 46 - 25 = 21 above (20 asked); 262 - 46 - 200 = 16 below (15 asked). */
    @Test
    void fiveLinesAreEnough() {
        ToldHouse told = Tell.house()
                .unit("cooler", 0, Map.of("top", 20.0, "bottom", 15.0))
                .done();
        House house = HandHouse.of(told, (scene, tape) -> {
            Stack roof = tape.exact("cavities.loft.high", 262);
            Stack top = roof.minus(tape.exact("units.cooler.at.top", 46));
            slab(scene, "loft.top", roof.minus(tape.exact("cavities.loft.top.linings[1].pir", 25)), roof.plus(99));
            slab(scene, "loft.ceiling", Stack.constant(-99), Stack.ZERO);
            unit(scene, "loft", top.minus(tape.exact("units.cooler.high", 200)), top);
        });
        Asked asked = Asked.of(house);
        asked.expect("fit.maker/units.cooler.clearance.top", 21, 20, 1, Verdict.PASSES);
        asked.expect("fit.maker/units.cooler.clearance.bottom", 16, 15, 1, Verdict.PASSES);
    }

    /**
     * Site cabin in inches (25.4 mm each): 92 to the roof - 2 3/8 - 7 7/8 = 81 3/4 at the underside; ceiling 79 1/2 ± 1/8 +
     * batten 3/4 + ply 1/2 = 80 3/4. Gap 1 in = 25.4, asked 3/4 in = 19.05: +6.35; less 1/8 in = 3.175: +3.175.
     */
    @Test
    void cabinInInches() {
        double inch = 25.4;
        ToldHouse told =
                Tell.house().unit("cooler", 0, Map.of("bottom", 0.75 * inch)).done();
        House house = HandHouse.of(told, (scene, tape) -> {
            Stack ceiling = tape.read("cavities.soffit.ceiling.at", 79.5 * inch, 0.125 * inch);
            Stack battens = ceiling.plus(tape.exact("cavities.soffit.ceiling.linings[2].ply", 0.5 * inch))
                    .plus(tape.exact("cavities.soffit.ceiling.linings[1].batten", 0.75 * inch));
            Stack top = tape.exact("rooms.office.ceiling", 92 * inch)
                    .minus(tape.exact("units.cooler.at.top", 2.375 * inch));
            slab(scene, "soffit.ceiling", ceiling.minus(99), battens);
            unit(scene, "soffit", top.minus(tape.exact("units.cooler.high", 7.875 * inch)), top);
        });
        Asked.of(house).expect("fit.maker/units.cooler.clearance.bottom", 25.4, 19.05, 3.175, Verdict.PASSES);
    }

    /**
     * The reference stack for lopsided tolerances: opening 640 +3/-1, ply 6.5 +0.395/-0.595 on both sides (EN 315, sanded:
     * +(0.2 + 0.03 t)/-(0.4 + 0.03 t), here t = 6.5), unit 600 ± 2, pads 6.0 ± 0.5 on both sides.
     *
     * <p>Nominal 640 - 13 - 600 - 12 = 15. Middles: opening 641, ply 6.4, so 641 - 12.8 - 600 - 12 = 16.2. Half widths: 2 +
     * 2 x 0.495 + 2 + 2 x 0.5 = 5.99, so 10.21 to 22.19.
     */
    @Test
    void lopsidedTolerancesMoveTheMiddle() {
        ToldHouse told = Tell.house().unit("cooler", 0, Map.of("left", 10.0)).done();
        House house = HandHouse.of(told, (scene, tape) -> {
            Stack right = tape.read("bay.ply-right", 6.5, 0.395, 0.595).plus(tape.read("bay.pad-right", 6, 0.5));
            Stack left = right.plus(tape.read("units.cooler.wide", 600, 2)).plus(tape.read("bay.pad-left", 6, 0.5));
            Stack wall = tape.read("bay.opening", 640, 3, 1).minus(tape.read("bay.ply-left", 6.5, 0.395, 0.595));
            Stack z = Stack.ZERO;
            scene.put(
                            PartKind.LINING,
                            "cavities.bay.left",
                            "bay",
                            new Box(z, z.plus(900), wall, wall.plus(99), z, z.plus(500)))
                    .put(
                            PartKind.UNIT,
                            "units.cooler",
                            "bay",
                            new Box(z.plus(100), z.plus(550), right, left, z.plus(100), z.plus(300)));
        });
        Finding finding = Asked.of(house).expect("fit.maker/units.cooler.clearance.left", 15, 10, 0.21, Verdict.PASSES);
        double up = finding.stack().stream()
                .mapToDouble(layer -> layer.factor() > 0 ? layer.plus() : layer.minus())
                .sum();
        assertEquals(22.19, finding.value().orElseThrow().number() + up, 1e-9);
        double middle = (finding.value().orElseThrow().number() + up + 10.21) / 2;
        assertEquals(16.2, middle, 1e-9);
    }

    /**
     * Flat channel in a wall: faces 1890 ± 1 and 1930 ± 1 along the trailer, channel 25 ± 0.2 clear + 2 x 1 of pvc = 27,
     * 6.5 ± 1 from the near face. Far gap 1930 - 1890 - 6.5 - 27 = 6.5, asked 5: +1.5; less 1 + 1 + 1 + 0.2 = 3.2: -1.7.
     */
    @Test
    void channelInAWallIsTight() {
        House house = HandHouse.of(Tell.house().done(), (scene, tape) -> {
            Stack near = tape.read("cavities.wall.at.rear[1]", 1890, 1);
            Stack far = tape.read("cavities.wall.at.rear[2]", 1930, 1);
            Stack rear = near.plus(tape.read("runs.flat.path[1].at.rear", 6.5, 1));
            Stack front = rear.plus(tape.read("terminals.toilet.high", 25, 0.2))
                    .plus(tape.exact("runs.flat.layers[1].pvc", 1).times(2));
            Stack zero = Stack.ZERO;
            scene.put(
                            PartKind.LINING,
                            "cavities.wall.front",
                            "wall",
                            new Box(far, far.plus(99), zero, zero.plus(870), zero, zero.plus(2000)))
                    .put(
                            PartKind.DUCT,
                            "runs.flat.path[1]",
                            "wall",
                            new Box(rear, front, zero.plus(200), zero.plus(502), zero.plus(300), zero.plus(1900)));
        });
        Asked.of(house).expect("fit.clearance/runs.flat/cavities.wall.front", 6.5, 5, -1.7, Verdict.TIGHT);
    }

    /**
     * Duct on a plywood shelf under a board, one foam all round: 150 between the boards' faces, ply 12 +0.56/-0.76 (EN 315,
     * sanded, t = 12), duct 100 clear + 2 x 0.6 of sheet + 2 x 13 ± 1 of foam = 127.2, lying on the ply. Gap 150 - 12 - 127.2 =
     * 10.8, asked 5: +5.8. The foam is one roll and counts twice: less 0.56 + 2 x 1 = 2.56: +3.24.
     */
    @Test
    void oneFoamCountsOnBothSides() {
        House house = HandHouse.of(Tell.house().clearance(5).done(), (scene, tape) -> {
            Stack shelf = tape.read("cavities.bay.floor.linings[1].ply", 12, 0.56, 0.76);
            Stack top = shelf.plus(tape.exact("runs.supply.path[1].high", 100))
                    .plus(tape.exact("runs.supply.layers[1].galv", 0.6).times(2))
                    .plus(tape.read("runs.supply.layers[2].foam", 13, 1).times(2));
            Stack board = tape.exact("cavities.bay.high", 150);
            slab(scene, "bay.top", board, board.plus(99));
            scene.put(PartKind.DUCT, "runs.supply.path[1]", "bay", Box.upright(0, 900, 400, 700, shelf, top));
        });
        Asked.of(house).expect("fit.clearance/runs.supply/cavities.bay.top", 10.8, 5, 3.24, Verdict.PASSES);
    }

    /**
     * Sawn timber beside a duct: 400 ± 2 between two walls, a stud 95 +3/-1 (EN 336 class 1, up to 100 mm) against one, a
     * duct 290 ± 0.5 against the other. Gap 15, asked 12: +3; less 2 + 3 + 0.5: -2.5.
     */
    @Test
    void sawnStudMaySwellIntoTheGap() {
        House house = HandHouse.of(Tell.house().clearance(12).done(), (scene, tape) -> {
            Stack zero = Stack.ZERO;
            Stack wall = tape.read("cavities.bay.wide", 400, 2);
            Stack stud = wall.minus(tape.read("fixtures.stud.wide", 95, 3, 1));
            Stack duct = tape.read("runs.supply.path[1].wide", 290, 0.5);
            scene.put(
                            PartKind.FIXTURE,
                            "fixtures.stud",
                            "bay",
                            new Box(zero, zero.plus(45), stud, wall, zero, zero.plus(2000)))
                    .put(
                            PartKind.DUCT,
                            "runs.supply.path[1]",
                            "bay",
                            new Box(zero, zero.plus(600), zero, duct, zero.plus(900), zero.plus(1100)));
        });
        Asked.of(house).expect("fit.clearance/runs.supply/fixtures.stud", 15, 12, -2.5, Verdict.TIGHT);
    }

    /**
     * Drain at its low end: the cooler's underside is 9 over the battens, the port 35 ± 1 higher, half the wrapped pipe 26/2 +
     * 9 = 22, the fall 2 % of 230 = 4.6. Gap 9 + 35 - 22 - 4.6 = 17.4, asked 5: +12.4; less 10.5 + 1: +0.9.
     */
    @Test
    void drainClearsTheBattensAtItsLowEnd() {
        House house = HandHouse.of(Lobby.told(1930), (scene, tape) -> {
            Lobby.lay(scene, tape);
            Stack underside = tape.read("trailers.bunk.roof.profile[2].up", 2244, 3)
                    .minus(tape.read("units.cooler.at.top", 48, 2))
                    .minus(tape.read("units.cooler.high", 200, 1));
            Stack middle = underside
                    .plus(tape.read("units.cooler.ports.drain.at.bottom", 35, 1))
                    .minus(4.6);
            scene.put(
                            PartKind.LINE,
                            "lines.drain.path[1]",
                            "lobby-top",
                            Box.upright(560, 604, 1150, 1340, middle.minus(22), middle.plus(22)))
                    .tie("lines.drain.path[1]", "units.cooler", true);
        });
        Asked.of(house).expect("fit.clearance/lines.drain/cavities.lobby-top.ceiling", 17.4, 5, 0.9, Verdict.PASSES);
    }

    /**
     * A roof read as 300 ± 3 at y = 0 and as 300 ± 3 at y = 1000; a duct from y = 200 to 900 that hangs 20 from the first
     * reading. Gap 20 all over, asked 5: +15. At y = 900 the roof is 0.1 of the first reading and 0.9 of the second, the duct
     * all of the first: 0.9 x 3 + 0.9 x 3 = 5.4 against it, so +9.6. (At y = 200 it would only be 0.2 x 6 = 1.2.)
     */
    @Test
    void flatFacesAreHeldWhereTheirTolerancesTakeMost() {
        House house = HandHouse.of(Tell.house().done(), (scene, tape) -> {
            Stack near = tape.read("trailers.bunk.roof.profile[1].up", 300, 3);
            Stack far = tape.read("trailers.bunk.roof.profile[2].up", 300, 3);
            Stack top = near.minus(tape.exact("runs.supply.path[1].at.top", 20));
            scene.put(PartKind.DUCT, "runs.supply.path[1]", "bay", Box.upright(0, 500, 200, 900, ZERO, top));
            Box flat = Box.upright(0, 500, 0, 1000, near, near.plus(50));
            Part slab = flat.part(PartKind.LINING, "cavities.bay.top", "bay");
            scene.parts()
                    .add(new Part(
                            slab.id(),
                            slab.thing(),
                            slab.kind(),
                            slab.title(),
                            slab.spaces(),
                            slab.trailer(),
                            slab.body(),
                            (point, direction) -> {
                                double share = point.getY() / 1000;
                                Stack up = near.times(1 - share).plus(far.times(share));
                                return Stack.constant(point.dot(direction))
                                        .plus(up.minus(up.valueMm()).times(direction.getZ()));
                            }));
        });
        Asked.of(house).expect("fit.clearance/runs.supply/cavities.bay.top", 20, 5, 15 - 5.4, Verdict.PASSES);
    }

    /** A guess is named: 30 ± 5 assumed between a pipe and a duct, asked 5. */
    @Test
    void assumedReadingIsNamed() {
        House house = HandHouse.of(Tell.house().done(), (scene, tape) -> {
            Stack pipe = tape.read("fixtures.pipe.at.floor", 30, 5, 5, Origin.ASSUMED);
            scene.put(
                            PartKind.DUCT,
                            "runs.low.path[1]",
                            "",
                            Box.upright(0, 500, 0, 200, Stack.constant(-80), Stack.ZERO))
                    .put(PartKind.FIXTURE, "fixtures.pipe", "", Box.upright(0, 500, 0, 200, pipe, pipe.plus(20)));
        });
        Finding finding = Asked.of(house).expect("fit.clearance/runs.low/fixtures.pipe", 30, 5, 20, Verdict.PASSES);
        assertEquals(List.of("fixtures.pipe.at.floor", "limits.clearance"), finding.restsOn());
    }

    /** Overlap: a rail 144 high hangs 12 into a duct 80 high; the least way out is 12 down. Asked 5: -17. */
    @Test
    void overlapIsADepth() {
        BiConsumer<HandScene, Tape> plan = (scene, tape) -> {
            Stack rail = tape.read("fixtures.rail.at.floor", 200, 2);
            Stack duct = tape.read("runs.low.path[1].at.floor", 132, 1);
            scene.put(PartKind.FIXTURE, "fixtures.rail", "", Box.upright(100, 160, 0, 600, rail, rail.plus(144)))
                    .put(PartKind.DUCT, "runs.low.path[1]", "", Box.upright(0, 500, 0, 600, duct, duct.plus(80)));
        };
        Finding finding = Asked.of(HandHouse.of(Tell.house().done(), plan))
                .expect("fit.clearance/runs.low/fixtures.rail", -12, 5, -20, Verdict.FAILS);
        assertTrue(finding.because().startsWith("path[1] and rail share room, 12 mm deep; 5 mm asked: 17 mm short"));
    }

    private static void slab(HandScene scene, String lining, Stack bottom, Stack top) {
        String cavity = lining.substring(0, lining.indexOf('.'));
        scene.put(PartKind.LINING, "cavities." + lining, cavity, Box.upright(0, 1650, 0, 900, bottom, top));
        if (scene.cavities().isEmpty()) {
            Outline plan = Outline.rectangle(0, 0, 1650, 900);
            scene.cavity(new FlatCavity(cavity, plan, Stack.ZERO, Stack.constant(100), false, ""));
        }
    }

    private static void unit(HandScene scene, String cavity, Stack bottom, Stack top) {
        scene.put(PartKind.UNIT, "units.cooler", cavity, Box.upright(600, 1050, 100, 800, bottom, top));
    }
}
