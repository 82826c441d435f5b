package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.measure.Layer;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** Four houses, each figure worked by hand from the readings beside it. */
class WorkedHousesTest {
    private static final double EXACT = 1e-6;
    private static final double INCH = 25.4;

    @Nested
    class SiteCabin {
        private final Scene scene = Sketch.home("site-cabin");

        @Test
        void depth_92less79andAHalf_less2andThreeQuartersOfLinings() {
            CavitySpace soffit = scene.cavities().get(0);
            assertEquals(
                    9.75 * INCH, soffit.leastDepth(soffit.outline()).stack().valueMm(), EXACT);
        }

        @Test
        void above_sevenEighths_below_one() {
            // 2 3/8 under the roof less 1 1/2 of glass wool; 92 - 2 3/8 - 7 7/8 above the floor less 79 1/2 + 1 1/4.
            assertEquals(0.875 * INCH, Sketch.gap(scene, "units.cooler", "cavities.soffit.top"), EXACT);
            assertEquals(1 * INCH, Sketch.gap(scene, "units.cooler", "cavities.soffit.ceiling"), EXACT);
        }

        @Test
        void drain_fallsOneInFifty_itsFoamClearsTheBattensByFiveEighths() {
            // 81 3/4 + 1 1/2 - 1 of fall - 1/2 of pipe - 3/8 of foam = 81 3/8 at its end; battens' top 80 3/4. It goes
            // out by the wall 1 1/2 short of its end, 0.03 higher. A slant of 1 in 50 makes a radius of 7/8 reach 2e-4
            // more, and the edge that it passes over is nearest square to the slant, not straight below.
            double slant = Math.hypot(1, 0.02);
            double upright = 0.625 * INCH + 1.5 / 50 * INCH - 0.875 * INCH * (slant - 1);
            assertEquals(upright / slant, Sketch.gap(scene, "lines.drain.path[1]", "cavities.soffit.ceiling"), EXACT);
        }

        @Test
        void room_standsAt79andAHalfUnderTheSoffit() {
            RoomSpace office = scene.rooms().get(0);
            assertEquals(
                    79.5 * INCH, office.leastHeight(office.outline()).stack().valueMm(), EXACT);
        }
    }

    @Nested
    class BoatLocker {
        private final Scene scene = Sketch.home("boat-locker");

        @Test
        void unit_standsOnItsBearers() {
            assertEquals(445, Sketch.bounds(scene, "units.cooler").minZ(), EXACT);
            assertTrue(scene.tie(Sketch.part(scene, "units.cooler"), Sketch.part(scene, "fixtures.bearer-aft"))
                    .isPresent());
        }

        @Test
        void hull_asksForAnUndersideAt433() {
            // The unit's left edge is 30 + 460 from the bulkhead. Square to the upper piece of the hull, which goes 125
            // out over 480 up, 5 of clearance and 10 of cork take (5 + 10) / cos in width: lowest where the hull's
            // offset
            // is 490 + 15.5 = 505.5, at 220 + (505.5 - 450) / 125 x 480 = 433.1.
            double cos = 480 / Math.hypot(480, 125);
            double lowest = 220 + (490 + 15 / cos - 450) / 125 * 480;
            assertEquals(433.1, lowest, 0.05);
            double gap = Sketch.gap(scene, "units.cooler", "cavities.locker.left");
            // Standing 445 - 433.1 higher, the corner is that much times sine farther from the hull.
            assertEquals(5 + (445 - lowest) * 125 / Math.hypot(480, 125), gap, EXACT);
        }

        @Test
        void filterRoom_clearsTheShelfBy10() {
            assertEquals(
                    10,
                    Sketch.bounds(scene, "units.cooler.service.filter").minZ()
                            - Sketch.bounds(scene, "fixtures.shelf").maxZ(),
                    EXACT);
        }

        @Test
        void depth_atTheHull_endsOnTheCork() {
            // 450 from the bulkhead the cork lies where the hull's offset is 450 + 10 / cos.
            double cos = 480 / Math.hypot(480, 125);
            double low = 220 + 10 / cos / 125 * 480;
            double y = -287.5 + 450;
            CavitySpace.Depth depth = scene.cavities().get(0).leastDepth(Outline.rectangle(100, 0, 200, y));
            assertEquals(low, depth.low().getZ(), EXACT);
            assertEquals(700 - low, depth.stack().valueMm(), EXACT);
        }
    }

    @Nested
    class Saltmarsh {
        private final House house = Sketch.sound(Sketch.text("saltmarsh"));
        private final Scene scene = house.scene("parked");

        @Test
        void cooler_nineAboveTheBattens() {
            Stack gap =
                    Sketch.stack(Sketch.part(scene, "cavities.lobby-top.ceiling"), Sketch.part(scene, "units.cooler"));
            // 2244 ± 3 - 48 ± 2 - 200 ± 1 - 1962 ± 3 - 19 ± 1 - 6 ± 0.5 = 9, at worst 9 - 10.5
            assertEquals(9, gap.valueMm(), EXACT);
            assertEquals(-1.5, gap.worstLow(), EXACT);
            // The roof's two upper points are two readings; under a level roof their shares add up to one.
            assertEquals(
                    List.of(
                            "cavities.lobby-top.ceiling.at",
                            "cavities.lobby-top.ceiling.linings[1].batten",
                            "cavities.lobby-top.ceiling.linings[2].ply",
                            "trailers.bunk.roof.profile[2].up",
                            "trailers.bunk.roof.profile[3].up",
                            "units.cooler.at.top",
                            "units.cooler.high"),
                    gap.layers().stream()
                            .map(Layer::reading)
                            .filter(reading -> reading.origin() != Origin.DEFAULT)
                            .map(Reading::path)
                            .sorted()
                            .toList());
        }

        @Test
        void cooler_twentyThreeUnderTheRoofsLining_worst20() {
            // One measurement of the roof serves both its upper points, so that it can't tilt.
            String text = Sketch.text("saltmarsh")
                    .replace("{right: 300, up: 2244 ± 3}", "{right: 300, up: 'as trailers.bunk.roof.profile[2].up'}");
            Scene level = Sketch.sound(text).scene("parked");
            Stack gap = Sketch.stack(Sketch.part(level, "units.cooler"), Sketch.part(level, "cavities.lobby-top.top"));
            // 48 ± 2 - 25 ± 1: the roof is in both and drops out.
            assertEquals(23, gap.valueMm(), EXACT);
            assertEquals(20, gap.worstLow(), EXACT);
        }

        @Test
        void void_2244less1962less50_is232() {
            CavitySpace lobby = scene.cavities().get(0);
            var under = Outline.rectangle(610, -690, 1060, 10);
            assertEquals(232, lobby.leastDepth(under).stack().valueMm(), EXACT);
        }

        @Test
        void labSupply_sevenPointFourUnderTheRail() {
            // Rail 2244 - 144; duct's middle 2044, half of 70 + 2 x 13.6.
            assertEquals(7.4, Sketch.gap(scene, "runs.lab-supply.path[4]", "fixtures.rail"), EXACT);
        }

        @Test
        void toiletFlat_sixAndAHalfInItsWall() {
            // 20 into a wall of 40; half of 25 + 2 x 1.
            assertEquals(6.5, Sketch.gap(scene, "runs.toilet-flat.path[2]", "cavities.wash-wall.rear"), EXACT);
            assertEquals(6.5, Sketch.gap(scene, "runs.toilet-flat.path[2]", "cavities.wash-wall.front"), EXACT);
        }

        @Test
        void toiletFlat_eightAboveTheBattens() {
            assertEquals(8, Sketch.gap(scene, "runs.toilet-flat.path[3]", "cavities.wash-top.ceiling"), EXACT);
        }

        @Test
        void shade_3182AboveTheRoad() {
            // 640 + 2244 + 63 + 190 + 45
            assertEquals(3182, 640 + Sketch.bounds(scene, "movers.shade").maxZ(), EXACT);
        }

        @Test
        void shade_slidesForward2900() {
            double home = Sketch.bounds(scene, "movers.shade").minX();
            assertEquals(
                    2900, Sketch.bounds(house.scene("shaded"), "movers.shade").minX() - home, EXACT);
        }

        @Test
        void hatch_hangsDownFromItsRightEdge() {
            // Pin at the ceiling's face, 1962, on the edge 920 + 400 left of the lobby's left face at 220.
            var open = Sketch.bounds(house.scene("serviced"), "movers.hatch");
            assertEquals(1962 - 400, open.minZ(), EXACT);
            assertEquals(1962, open.maxZ(), EXACT);
            assertEquals(-1100, open.minY(), EXACT);
            assertEquals(-1100 + 25, open.maxY(), EXACT);
        }

        @Test
        void lab_standsRearToRear_60apart() {
            // The louvre is 980 from the lab's front and in its left face: docked it is on the site's right.
            Mouth louvre = scene.mouths().stream()
                    .filter(mouth -> mouth.path().equals("terminals.hood-louvre"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(-60 - (4400 - 980), louvre.centre().getX(), EXACT);
            assertEquals(-1150, louvre.centre().getY(), EXACT);
            assertEquals(1, louvre.outward().getY(), EXACT);
        }

        @Test
        void onTheRoad_theLabAndTheCuffAreGone_andWhatFollowsTheCuff() {
            Scene road = house.scene("on-the-road");
            assertTrue(road.road());
            assertTrue(road.parts().stream().noneMatch(part -> part.trailer().equals("lab")));
            assertTrue(road.part("runs.lab-supply.path[7]").isEmpty());
            assertTrue(road.part("runs.lab-supply.path[8]").isEmpty());
            assertTrue(road.part("runs.lab-supply.path[6]").isPresent());
        }

        @Test
        void berthSupply_isLong350And220() {
            // 1930 - 90 - 520 - 450 - 300 = 570
            assertEquals(570, house.runs().get(0).lengthMm(), EXACT);
        }

        @Test
        void headroom_1962UnderTheCeilingOfTheLobby() {
            RoomSpace lobby = scene.rooms().get(0);
            assertEquals(1962, lobby.leastHeight(lobby.outline()).stack().valueMm(), EXACT);
        }

        @Test
        void masses_twoOfThemStores() {
            assertEquals(1, house.masses().stream().filter(MassPoint::store).count());
            assertEquals(10, house.masses().size());
        }
    }
}
