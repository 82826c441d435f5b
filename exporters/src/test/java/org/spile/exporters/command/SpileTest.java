package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class SpileTest {

    private record Answer(int status, String out, String err) {}

    private static Answer spile(String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        var status = Spile.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Answer(status, out.toString(), err.toString());
    }

    @Test
    void help_goesToOutAndNamesTheExitStatuses() {
        var answer = spile("--help");
        assertEquals(0, answer.status());
        assertEquals("", answer.err());
        assertTrue(answer.out().contains("Exit status:"), answer.out());
    }

    @Test
    void version_isTheBuilds() {
        var answer = spile("--version");
        assertEquals(0, answer.status());
        assertTrue(answer.out().matches("spile \\d+\\.\\d+\\.\\d+\\R"), answer.out());
    }

    @Test
    void unknownOption_oneLineOfErrorOneOfHint() {
        var answer = spile("--hlep");
        assertEquals(2, answer.status());
        assertEquals("", answer.out());
        assertEquals(2, answer.err().lines().count(), answer.err());
        assertTrue(answer.err().contains("--hlep"), answer.err());
        assertTrue(answer.err().contains("hint: "), answer.err());
    }

    @Test
    void noWords_isAUsageErrorWithAHint() {
        var answer = spile();
        assertEquals(2, answer.status());
        assertEquals(2, answer.err().lines().count(), answer.err());
    }
}
