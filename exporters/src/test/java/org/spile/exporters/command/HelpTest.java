package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds every page of help to the text reviewed and committed beside this test. */
class HelpTest {
    @ParameterizedTest
    @ValueSource(strings = {"spile", "start", "check", "draw", "place", "measure", "study", "reckon duct"})
    void help_isAsReviewed(String name) throws IOException {
        var answer = name.equals("spile") ? Answer.to("--help") : Answer.to((name + " --help").split(" ", -1));
        assertEquals(0, answer.status());
        assertEquals("", answer.err());
        assertEquals(reviewed("help-" + name.replace(' ', '-') + ".txt"), answer.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"spile", "start", "check", "draw", "place", "measure", "study", "reckon duct"})
    void help_fitsAScreenOfEightyColumns(String name) {
        var answer = name.equals("spile") ? Answer.to("-h") : Answer.to((name + " whatever -h").split(" ", -1));
        answer.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    private static String reviewed(String name) throws IOException {
        try (var in = HelpTest.class.getResourceAsStream(name)) {
            assertTrue(in != null, name + " is missing");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
