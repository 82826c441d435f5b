package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The places of a box in a box, worked out by hand, as text and as JSON; and words that can't be used. */
class PlaceCommandTest {
    @TempDir
    private Path folder;

    private String house;

    /** 5 mm are asked round everything, so the middle of 450 by 700 has 1650 - 460 by 900 - 710 to itself. */
    @BeforeEach
    void house() throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, """
                  cavities:
                    loft: {long: 1650, wide: 900, high: 262 mm, top: {linings: [{pir: 25 mm}]}}
                  units:
                    cooler: {long: 450 mm, wide: 700 mm, high: 200 mm, at: {top: 46 mm}, clearance: {top: 20 mm, bottom: 15 mm}}
                  """);
        house = file.toString();
    }

    @Test
    void theMapHasTheCornersOfTheRoomLeft() throws IOException {
        JsonNode json = json("--yaw", "0");
        JsonNode map = json.get("maps").get(0);
        assertEquals(1190 * 190, map.get("area").asDouble(), 1e-6);
        assertEquals(
                "[[230,-95],[1420,-95],[1420,95],[230,95]]",
                map.get("areas").get(0).get("outline").toString());
        assertTrue(json.get("fits").asBoolean() && json.get("now").get("fits").asBoolean());
        assertTrue(json.get("no-place").isNull());
    }

    @Test
    void aSlotOfExactlyTheNeededWidthIsALine() throws IOException {
        JsonNode map = json("--yaw", "0", "--set", "cavities.loft.wide=710")
                .get("maps")
                .get(0);
        assertEquals(0, map.get("area").asDouble(), 1e-9);
        assertEquals("[[[230,0],[1420,0]]]", map.get("lines").toString());
        assertFalse(json("--yaw", "0", "--set", "cavities.loft.wide=709.99")
                .get("fits")
                .asBoolean());
    }

    @Test
    void noPlaceNamesTheLimitAndHowMuchItWouldHaveToYield() throws IOException {
        // 262 - 46 - 205 = 11 below, 15 asked.
        JsonNode none = json("--yaw", "0", "--set", "units.cooler.high=205").get("no-place");
        assertEquals(
                "fit.maker/units.cooler.clearance.bottom", none.get("governing").asText());
        JsonNode bottom = null;
        for (JsonNode limit : none.get("limits")) {
            bottom = limit.get("id").asText().endsWith(".bottom") ? limit : bottom;
        }
        assertEquals(4, bottom.get("yields").asDouble(), 1e-9);
        assertEquals(
                1,
                Answer.to("place", house, "cooler", "--set", "units.cooler.high=205")
                        .status());
    }

    @Test
    void aUnitLargerThanItsCavityIsAFinding() throws IOException {
        JsonNode none = json("--set", "units.cooler.long=1700").get("no-place");
        assertEquals(50, none.get("too-large").asDouble(), 1e-9);
    }

    @Test
    void wordsThatCantBeUsed() {
        Answer.to("place", house, "coler").assertRefused("no unit \"coler\"", "cooler");
        Answer.to("place", house, "cooler", "--yaw", "sideways").assertRefused("is no angle", "--yaw 90");
    }

    private JsonNode json(String... more) throws IOException {
        String[] words = new String[4 + more.length];
        words[0] = "place";
        words[1] = house;
        words[2] = "cooler";
        words[3] = "--json";
        System.arraycopy(more, 0, words, 4, more.length);
        return new ObjectMapper().readTree(Answer.to(words).out());
    }
}
