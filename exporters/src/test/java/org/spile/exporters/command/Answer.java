package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** What a command line gave. */
record Answer(int status, String out, String err) {
    static Answer to(String... words) {
        return of(Spile.withAllCommands(), words);
    }

    static Answer of(Spile spile, String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        var status = spile.run(new Console(new PrintWriter(out), new PrintWriter(err), false), Arrays.asList(words));
        return new Answer(status.code(), out.toString(), err.toString());
    }

    /** Refused with one line of error and one of hint, and nothing else. */
    void assertRefused(String error, String hint) {
        assertEquals(2, status, err);
        assertEquals("", out);
        var lines = err.lines().toList();
        assertEquals(2, lines.size(), err);
        assertTrue(lines.get(0).startsWith("spile: ") && lines.get(0).contains(error), err);
        assertTrue(lines.get(1).startsWith("hint: ") && lines.get(1).contains(hint), err);
    }
}
