package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Box3;

/**
 * One cavity, 262 deep with 25 of lining to come under the roof, and one unit hung 46 below the bare roof. By hand: 46 - 25
 * leaves 21 above the unit, 262 - 46 - 200 leaves 16 below it.
 */
class FiveLineHouseTest {
    private static final double EXACT = 1e-9;

    private static ToldHouse told(Optional<Double> top) {
        var at = top.map(mm -> List.of(Tell.from("units.cooler", "top", mm))).orElse(List.of());
        var lining = Tell.lined("cavities.loft.top", Tell.layer("cavities.loft.top.linings[1]", "pir", 25));
        return Tell.house(
                List.of(Tell.cavity(
                        Tell.placed("cavities", "loft", Tell.box("cavities.loft", 1650, 900, 262)),
                        Optional.of(lining))),
                List.of(Tell.unit(
                        Tell.placed(
                                "units",
                                "cooler",
                                Tell.box("units.cooler", 450, 700, 200),
                                at.toArray(FaceDistance[]::new)),
                        Map.of("top", Tell.mm("units.cooler.clearance.top", 20)))));
    }

    private static House sound(Resolved resolved) {
        return assertInstanceOf(Resolved.Sound.class, resolved, resolved::toString)
                .house();
    }

    private static Scene scene(Resolved resolved) {
        return sound(resolved).scene(House.AS_BUILT);
    }

    private static Box3 bounds(Scene scene, String id) {
        return scene.part(id).orElseThrow().body().bounds();
    }

    @Test
    void gaps_byHand() {
        Scene scene = scene(House.of(told(Optional.of(46.0))));
        Box3 cooler = bounds(scene, "units.cooler");
        assertEquals(21, bounds(scene, "cavities.loft.top").minZ() - cooler.maxZ(), EXACT);
        assertEquals(16, cooler.minZ() - bounds(scene, "cavities.loft.ceiling").maxZ(), EXACT);
    }

    @Test
    void middle_whereUnsaid() {
        Vector3D middle =
                bounds(scene(House.of(told(Optional.of(46.0)))), "units.cooler").middle();
        assertEquals(825, middle.getX(), EXACT);
        assertEquals(0, middle.getY(), EXACT);
    }

    @Test
    void height_whereUnsaid_asHighAsClearanceAllows() {
        Scene scene = scene(House.of(told(Optional.empty())));
        assertEquals(
                20,
                bounds(scene, "cavities.loft.top").minZ()
                        - bounds(scene, "units.cooler").maxZ(),
                EXACT);
    }

    @Test
    void drop_lowersTheFloorOfTheCavity_thoughNobodyTypedIt() {
        House house = sound(House.of(told(Optional.of(46.0))));
        Scene lowered = scene(house.with(Map.of("cavities.loft.ceiling.drop", 10.0)));
        assertEquals(
                26,
                bounds(lowered, "units.cooler").minZ()
                        - bounds(lowered, "cavities.loft.ceiling").maxZ(),
                EXACT);
    }

    @Test
    void depth_liningToLining_withItsReadings() {
        Scene scene = scene(House.of(told(Optional.of(46.0))));
        CavitySpace loft = scene.cavities().get(0);
        CavitySpace.Depth depth = loft.leastDepth(Outline.rectangle(100, -100, 200, 100));
        assertEquals(237, depth.stack().valueMm(), EXACT);
        assertEquals(
                List.of("cavities.loft.ceiling.drop", "cavities.loft.high", "cavities.loft.top.linings[1].pir"),
                depth.stack().layers().stream()
                        .map(l -> l.reading().path())
                        .sorted()
                        .toList());
        assertThrows(IllegalArgumentException.class, () -> loft.leastDepth(Outline.rectangle(1700, 0, 1800, 10)));
    }

    @Test
    void gap_isASumOfReadings() {
        Scene scene = scene(House.of(told(Optional.of(46.0))));
        Part cooler = scene.part("units.cooler").orElseThrow();
        Part floor = scene.part("cavities.loft.ceiling").orElseThrow();
        Vector3D up = Vector3D.Unit.PLUS_Z;
        Stack gap = cooler.flex()
                .along(Vector3D.of(825, 0, 16), up)
                .minus(floor.flex().along(Vector3D.of(825, 0, 0), up));
        assertEquals(16, gap.valueMm(), EXACT);
        assertEquals(
                "0 + 262 cavities.loft.high - 46 units.cooler.at.top - 200 units.cooler.high"
                        + " + 0 cavities.loft.ceiling.drop = 16",
                gap.toString());
    }

    @Test
    void facesDontAddUp_saysByHowMuch() {
        ToldHouse house = Tell.house(
                List.of(Tell.cavity(
                        Tell.placed("cavities", "loft", Tell.box("cavities.loft", 1650, 1350, 262)), Optional.empty())),
                List.of(Tell.unit(
                        Tell.placed(
                                "units",
                                "cooler",
                                Tell.box("units.cooler", 450, 700, 200),
                                Tell.from("units.cooler", "left", 210),
                                Tell.from("units.cooler", "right", 430)),
                        Map.of())));
        Resolved.Wrong wrong = assertInstanceOf(Resolved.Wrong.class, House.of(house));
        assertEquals(
                List.of(new Trouble(
                        "units.cooler.at",
                        "left 210 + wide 700 + right 430 = 1340; loft is 1350 from left to right, 10 more",
                        "Leave one out.",
                        false)),
                wrong.troubles());
    }
}
