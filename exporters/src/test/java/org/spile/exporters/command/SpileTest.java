package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpileTest {
    @Test
    void help_goesToOutAndNamesTheExitStatuses() {
        var answer = Answer.to("--help");
        assertEquals(0, answer.status());
        assertEquals("", answer.err());
        assertTrue(answer.out().contains("Exit status"), answer.out());
    }

    @Test
    void version_isTheBuilds() {
        var answer = Answer.to("--version");
        assertEquals(0, answer.status());
        assertTrue(answer.out().matches("spile \\d+\\.\\d+\\.\\d+\n"), answer.out());
    }

    @Test
    void noWords_namesTheCommands() {
        Answer.to().assertRefused("no command was given", "start");
    }

    @Test
    void misspeltCommand_theNearest() {
        Answer.to("strat", "hut").assertRefused("no command \"strat\"", "did you mean start?");
    }

    @Test
    void strangeCommand_allOfThem() {
        Answer.to("frobnicate").assertRefused("no command \"frobnicate\"", "it takes ");
    }

    @Test
    void misspeltRootOption_theNearest() {
        Answer.to("--hlep").assertRefused("no option --hlep", "did you mean --help?");
    }

    @Test
    void misspeltOption_theNearest() {
        Answer.to("start", "hut", "--hepl").assertRefused("start has no option --hepl", "did you mean --help?");
    }

    @Test
    void missingOperand_itsName() {
        Answer.to("start").assertRefused("start needs DIR", "spile start --help");
    }

    @Test
    void oneWordTooMany_theWord() {
        Answer.to("start", "a", "b").assertRefused("\"b\" is one word too many", "quote a value");
    }

    @Test
    void neededOptionLeftOut_howToWriteIt() {
        Answer.to("draw", "house.yaml").assertRefused("draw needs -o DIR", "spile draw HOUSE -o DIR");
    }

    @Test
    void optionWithoutItsValue_whatIsMissing() {
        Answer.to("draw", "house.yaml", "-o").assertRefused("--output needs DIR behind it", "spile draw --help");
    }

    @Test
    void optionTwice_once() {
        Answer.to("draw", "house.yaml", "-o", "a", "-o", "b").assertRefused("--output stands 2 times", "write it once");
    }

    @Test
    void echoAndJson_oneOfThem() {
        Answer.to("check", "house.yaml", "--echo", "--json")
                .assertRefused("--echo is for people", "leave one of them out");
    }

    @Test
    void strangeCheck_theNearest() {
        Answer.to("check", "house.yaml", "--only", "fit.clearanse")
                .assertRefused("there is no check \"fit.clearanse\"", "did you mean fit.clearance?");
        Answer.to("check", "house.yaml", "--only", "weather")
                .assertRefused("there is no check \"weather\"", "there are ");
    }

    @Test
    void controlCharacters_neverReachTheTerminal() {
        var answer = Answer.to("start\u001b[31m\nx");
        assertEquals(2, answer.err().lines().count(), answer.err());
        assertTrue(answer.err().chars().noneMatch(c -> c == 27), answer.err());
    }

    @Test
    void ownFault_isOneLineWithoutATrace() {
        var broken = new Command() {
            @Override
            public Usage usage() {
                return new Usage("break", "breaks", List.of(), List.of(), List.of(), List.of());
            }

            @Override
            public ExitStatus run(Words words, Console console) {
                throw new IllegalStateException("a wheel came off");
            }
        };
        var answer = Answer.of(new Spile(List.of(broken)), "break");
        assertEquals(3, answer.status());
        assertTrue(answer.err().contains("a wheel came off at org.spile"), answer.err());
        assertEquals(2, answer.err().lines().count(), answer.err());
    }
}
