package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class IdsTest {
    private static final String LOFT = "cavities:\n  loft: {long: 1650, wide: 900, high: 262}\n";

    @Test
    void oneNameForTwoThings() {
        assertEquals(
                List.of("house.yaml:3:9: units: \"loft\" is already cavities.loft."
                        + " A name stands for one thing in the whole file."),
                Houses.wrong(LOFT + "units: {loft: {long: 450, wide: 700, high: 200}}\n"));
    }

    @Test
    void anOpeningIsAThingToo() {
        assertEquals(
                1,
                Houses.wrong(LOFT + "rooms: {hall: {long: 2000, wide: 900, openings: {loft: {face: left}}}}\n")
                        .size());
    }

    @Test
    void wordsOfTheFile_cantBeIds() {
        assertEquals(
                List.of("house.yaml:3:9: units: \"top\" is a word of its own here. Call it something else."),
                Houses.wrong(LOFT + "units: {top: {long: 450, wide: 700, high: 200}}\n"));
    }

    @Test
    void spelling_withTheBetterOne() {
        assertEquals(
                List.of(
                        "house.yaml:3:9: units: \"Fan_2\" isn't a name: small letters, digits and hyphens, a letter or digit"
                                + " first. Write fan-2, and title: \"Fan_2\"."),
                Houses.wrong(LOFT + "units: {Fan_2: {round: 118, long: 38}}\n"));
    }
}
