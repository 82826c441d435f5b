package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed, and the page that is drawn; the margin of 1 below the cooler is shared by three readings. */
class MeasureCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void house() throws IOException {
        Files.writeString(folder.resolve("house.yaml"), """
                title: Loft
                cavities:
                  loft: {long: 1650, wide: 900, high: 262}
                units:
                  cooler: {long: 450, wide: 700, high: 200 maker, at: {top: 46}, clearance: {bottom: 15}}
                """);
    }

    private Answer measure(String... words) {
        List<String> all =
                new ArrayList<>(List.of("measure", folder.resolve("house.yaml").toString()));
        all.addAll(Arrays.asList(words));
        return Answer.to(all.toArray(String[]::new));
    }

    /** 5 + 5 + 1 mm could come where 1 mm is left: a third of it each. */
    @Test
    void text_oneBlankForEachDimension() {
        var answer = measure();
        assertEquals(0, answer.status(), answer.err());
        assertTrue(answer.out().startsWith("Loft\n3 dimensions decide 1 finding"), answer.out());
        assertEquals(
                3,
                answer.out()
                        .lines()
                        .filter(line -> line.contains("____ ± ____"))
                        .count());
        assertTrue(answer.out().contains("46 mm, no tolerance; needed ± 0.33 mm; decides A"), answer.out());
        assertTrue(answer.out().contains("200 mm, maker's; needed ± 0.33 mm; decides A"), answer.out());
        answer.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void json_leavesNothingOut() throws IOException {
        JsonNode sheet = new ObjectMapper().readTree(measure("--json").out());
        JsonNode row = sheet.at("/stops/0/rows/0");
        assertEquals(
                List.of(
                        "number",
                        "rank",
                        "path",
                        "says",
                        "value",
                        "tolerance",
                        "origin",
                        "trust",
                        "presumed",
                        "needed",
                        "decides",
                        "stance",
                        "from",
                        "to"),
                names(row));
        assertEquals("cavities.loft.high", row.get("path").asText());
        assertEquals(1.0 / 3, row.get("needed").asDouble(), 1e-6);
        assertEquals(262, row.at("/to/2").asDouble(), 1e-6);
        assertEquals("A", sheet.at("/decided/0/letter").asText());
        assertEquals(0, sheet.get("left").asInt());
    }

    private static List<String> names(JsonNode node) {
        var names = new ArrayList<String>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void page_isDrawn() throws IOException {
        var answer = measure("-o", folder.resolve("tape").toString());
        assertEquals(0, answer.status(), answer.err());
        var svg = Files.readString(folder.resolve("tape/measure.svg"));
        assertTrue(svg.contains("cavities.loft.high") && svg.contains("width=\"210mm\" height=\"297mm\""), svg);
        assertTrue(Files.exists(folder.resolve("tape/house-measure.dxf")));
    }

    /** What was measured well needs no measuring again: nothing is drawn. */
    @Test
    void measured_asksNoMore() {
        var answer = measure(
                "--set", "cavities.loft.high=262 ± 0.3 measured",
                "--set", "units.cooler.high=200 ± 0.3 measured",
                "--set", "units.cooler.at.top=46 ± 0.3 measured",
                "-o", folder.resolve("tape").toString());
        assertEquals(0, answer.status(), answer.err());
        assertTrue(answer.out().contains("Nothing needs measuring"), answer.out());
        assertFalse(Files.exists(folder.resolve("tape")));
    }

    @Test
    void strangeCheck_theNearest() {
        measure("--only", "fti").assertRefused("there is no check \"fti\"", "did you mean fit?");
    }
}
