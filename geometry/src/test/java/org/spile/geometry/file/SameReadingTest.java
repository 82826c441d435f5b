package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

class SameReadingTest {
    private static final String HOUSE = """
            rooms:
              lobby: {long: 2000, wide: 1500, ceiling: 2200}
              wash: {long: 2000, wide: 1000, ceiling: 2200}
            cavities:
              lobby-top: {over: lobby, ceiling: {at: 1962 ± 3 measured, linings: [{batten: 19}, {ply: 6}]}}
              wash-top: {over: wash, ceiling: CEILING}
            """;

    private static String house(String ceiling) {
        return HOUSE.replace("CEILING", ceiling);
    }

    private static Reading washCeiling(String words) {
        ToldHouse house = Houses.sound(house(words));
        return house.cavities().get("wash-top").below().orElseThrow().at().orElseThrow();
    }

    @Test
    void as_isTheVerySameReading() {
        ToldHouse house = Houses.sound(house("as cavities.lobby-top.ceiling"));
        Reading one =
                house.cavities().get("lobby-top").below().orElseThrow().at().orElseThrow();
        Reading other =
                house.cavities().get("wash-top").below().orElseThrow().at().orElseThrow();
        assertEquals(one, other);
        assertEquals(0, Stack.of(one).minus(Stack.of(other)).worstHigh());
    }

    @Test
    void typedTwice_bothCount() {
        ToldHouse house = Houses.sound(house("1962 ± 3 measured"));
        Reading one =
                house.cavities().get("lobby-top").below().orElseThrow().at().orElseThrow();
        Reading other =
                house.cavities().get("wash-top").below().orElseThrow().at().orElseThrow();
        assertEquals(6, Stack.of(one).minus(Stack.of(other)).worstHigh());
    }

    @Test
    void as_mayNameTheSurfaceOrItsHeight() {
        assertEquals(
                "cavities.lobby-top.ceiling.at",
                washCeiling("as cavities.lobby-top.ceiling.at").path());
        assertEquals(
                "cavities.lobby-top.ceiling.at",
                washCeiling("as cavities.lobby-top.ceiling").path());
    }

    @Test
    void as_followsOn() {
        String text = house("as cavities.lobby-top.ceiling")
                + "units: {cooler: {in: wash-top, long: 450, wide: 700, high: 200, at: {top: as rooms.lobby.ceiling}}}\n";
        String chained = text.replace("ceiling: {at: 1962 ± 3 measured,", "ceiling: {at: as rooms.wash.ceiling,");
        assertEquals(
                "rooms.wash.ceiling",
                Houses.sound(chained)
                        .cavities()
                        .get("wash-top")
                        .below()
                        .orElseThrow()
                        .at()
                        .orElseThrow()
                        .path());
    }

    /** A layer pointed to keeps the tolerance of its own material, so that both are one reading. */
    @Test
    void as_toALayer_keepsItsMaterialsTolerance() {
        String text = house("{at: 1962, linings: [{ply: 'as cavities.lobby-top.ceiling.linings[2].ply'}]}");
        ToldHouse house = Houses.sound(text);
        Reading one = house.cavities()
                .get("lobby-top")
                .below()
                .orElseThrow()
                .linings()
                .get(1)
                .thick();
        Reading other = house.cavities()
                .get("wash-top")
                .below()
                .orElseThrow()
                .linings()
                .get(0)
                .thick();
        assertEquals(one, other);
        assertEquals(0.38, other.plus(), 1e-12);
    }

    @Test
    void as_outIsNotPartOfTheReading() {
        String text = house("1962")
                + "units: {cooler: {in: wash-top, long: 450, wide: 700, high: 200, at: {ceiling: as cavities.wash-top.ceiling out}}}\n";
        var at = Houses.sound(text).units().get("cooler").placed().at().get(0);
        assertEquals(true, at.out());
        assertEquals("cavities.wash-top.ceiling", at.near().path());
    }

    @Test
    void circle_toldWhole() {
        String text = house("as cavities.lobby-top.ceiling")
                .replace("ceiling: {at: 1962 ± 3 measured,", "ceiling: {at: as cavities.wash-top.ceiling,");
        assertEquals(
                List.of(
                        "house.yaml:5:42: cavities.lobby-top.ceiling.at: this goes in a circle: cavities.lobby-top.ceiling.at ->"
                                + " cavities.wash-top.ceiling -> cavities.lobby-top.ceiling.at. One of them needs a number.",
                        "house.yaml:6:35: cavities.wash-top.ceiling: this goes in a circle: cavities.wash-top.ceiling ->"
                                + " cavities.lobby-top.ceiling.at -> cavities.wash-top.ceiling. One of them needs a number."),
                Houses.wrong(text));
    }

    @Test
    void nothingThere_nearestPathNamed() {
        assertEquals(
                List.of("house.yaml:6:35: cavities.wash-top.ceiling: there is no \"cavities.loby-top.ceiling\"."
                        + " Nearest: \"cavities.lobby-top\"."),
                Houses.wrong(house("as cavities.loby-top.ceiling")));
    }

    @Test
    void anotherKind_refused() {
        String text = house("as rooms.lobby.steam").replace("lobby: {", "lobby: {steam: 2.6 kg/h, ");
        assertEquals(
                List.of("house.yaml:6:35: cavities.wash-top.ceiling: rooms.lobby.steam is \"2.6 kg/h\", not a length."
                        + " Point to one value of the same kind."),
                Houses.wrong(text));
    }
}
