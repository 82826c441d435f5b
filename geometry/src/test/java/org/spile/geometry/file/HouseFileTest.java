package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

class HouseFileTest {
    @ParameterizedTest
    @ValueSource(strings = {"loft", "site-cabin", "boat-locker", "saltmarsh"})
    void wholeHouses_areSound(String name) {
        assertFalse(Houses.sound(Houses.text(name)).cavities().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"loft", "site-cabin", "boat-locker", "saltmarsh"})
    void wholeHouses_addUp(String name) {
        HouseResult result = HouseFile.houseText("house.yaml", Houses.text(name), List.of(), List.of());
        if (result instanceof HouseResult.Wrong wrong) {
            fail(wrong.problems().toString());
        }
    }

    @Test
    void sampleWithDrawnOutlines_isSound() {
        ReadResult result = HouseFile.read(Houses.inProject("samples/saltmarsh/house.yaml"), List.of(), List.of());
        assertEquals(List.of(), Houses.lines(result));
    }

    @Test
    void loft_asTyped() {
        ToldHouse house = Houses.sound(Houses.text("loft"));
        ToldUnit cooler = house.units().get("cooler");
        FaceDistance top = cooler.placed().at().get(0);
        assertEquals("top", top.face());
        assertEquals(46, top.near().value());
        assertEquals("units.cooler.at.top", top.near().path());
        assertEquals(
                262,
                house.cavities()
                        .get("loft")
                        .placed()
                        .sizes()
                        .highMm()
                        .orElseThrow()
                        .value());
        assertEquals(Optional.empty(), house.cavities().get("loft").below());
        assertTrue(house.cavities().get("loft").belowIsCeiling());
        assertEquals(20, cooler.clearance().get("top").value());
    }

    /** 79 1/2 in = 2019.3 mm, 1/8 in = 3.175 mm (the inch is 25.4 mm exactly). */
    @Test
    void siteCabin_inches() {
        ToldHouse house = Houses.sound(Houses.text("site-cabin"));
        Reading ceiling =
                house.cavities().get("soffit").below().orElseThrow().at().orElseThrow();
        assertEquals(2019.3, ceiling.value(), 1e-9);
        assertEquals(3.175, ceiling.plus(), 1e-9);
        assertEquals(Origin.MEASURED, ceiling.origin());
        assertEquals(0.6, house.runs().get("desk").layers().get(0).thick().value());
    }

    @Test
    void saltmarsh_isReadWhole() {
        ToldHouse house = Houses.sound(Houses.text("saltmarsh"));
        assertEquals(2, house.trailers().size());
        assertEquals(8, house.runs().size());
        assertEquals(9, house.units().size());
        assertEquals("bunk", house.trailers().get("lab").dock().orElseThrow().to());
        assertEquals("rear", house.trailers().get("lab").dock().orElseThrow().toFace());
        ToldRun supply = house.runs().get("lab-supply");
        assertEquals(8, supply.stations().size());
        assertEquals(Optional.empty(), supply.stations().get(7).ways().get("aft"));
        assertEquals("cuff", supply.stations().get(6).parts());
        assertEquals(List.of("lab-damper"), supply.stations().get(0).through());
        assertEquals(
                List.of("parked", "shaded", "serviced", "on-the-road"),
                List.copyOf(house.stances().keySet()));
        assertEquals(0.055, house.limits().flow().get("berths").value(), 1e-12);
        assertEquals(
                304.15,
                house.climate()
                        .orElseThrow()
                        .states()
                        .get("muggy")
                        .get("outside")
                        .what()
                        .value(),
                1e-9);
    }

    @Test
    void like_copiesAllButTitleAndWhatIsTyped() {
        ToldHouse house = Houses.sound(Houses.text("saltmarsh"));
        ToldUnit copy = house.units().get("fan-b");
        assertEquals(118, copy.placed().sizes().roundMm().orElseThrow().value());
        assertEquals(
                "units.fan-b.round",
                copy.placed().sizes().roundMm().orElseThrow().path());
        assertEquals("fan-b", copy.placed().title());
        assertEquals(
                2,
                house.fixtures().get("deck-rail-right").placed().at().stream()
                        .filter(each -> List.of("rear", "right").contains(each.face()))
                        .count());
        assertFalse(house.fixtures().get("deck-rail-right").placed().at().stream()
                .anyMatch(each -> each.face().equals("left")));
    }

    @Test
    void places_ofWhatIsTypedAndOfWhatIsNot() {
        var sound =
                assertInstanceOf(ReadResult.Sound.class, HouseFile.readText("house.yaml", Houses.text("saltmarsh")));
        assertEquals("house.yaml:74:9", sound.places().of("units.cooler.in").toString());
        assertEquals(sound.places().of("cavities.wash-wall"), sound.places().of("cavities.wash-wall.floor.drop"));
        assertEquals("house.yaml", sound.places().of("nothing.there").toString());
    }

    @Test
    void allProblemsAtOnce() {
        String text = Houses.text("saltmarsh")
                .replace("bench: 40 L/s", "bench: 40")
                .replace("front: 180 out", "front: -180")
                .replace("in: lobby-top\n", "in: loby-top\n")
                .replace("hatch: open", "hatch: opne");
        assertEquals(
                List.of(
                        "house.yaml:74:9: units.cooler.in: there is no \"loby-top\". Nearest: \"lobby-top\" (a cavity).",
                        "house.yaml:106:35: units.outdoor.at.front: \"-180\": a distance has no sign."
                                + " Inwards from the front of bunk: 180. Beyond it: 180 out.",
                        "house.yaml:175:54: limits.flow.bench: \"40\" has no unit. A flow is 40 L/s, 40 m3/h or 40 cfm.",
                        "house.yaml:181:21: stances.serviced.hatch: \"opne\" is no state of hatch, a mover."
                                + " Nearest: \"open\". It can be shut, open or an angle."),
                Houses.wrong(text));
    }

    @Test
    void emptyHouse_isAskedForOneThing() {
        assertEquals(1, Houses.wrong("title: Nothing yet\n").size());
        assertTrue(Houses.wrong("title: Nothing yet\n").get(0).contains("no trailer, room or cavity"));
    }
}
