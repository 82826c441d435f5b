package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs what the page about the command says to type. */
class CommandPageTest {
    private static final Path PAGE = SpileJar.ROOT.resolve("docs/reference/command.md");
    private static final String PROMPT = "$ spile ";

    @TempDir
    private Path folder;

    @Test
    void everyExampleEndsAsThePageSays() throws Exception {
        var examples = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith(PROMPT))
                .toList();
        assertTrue(examples.size() > 10, examples::toString);
        var spile = SpileJar.shell(SpileJar.command(List.of()));
        for (var example : examples) {
            int mark = example.indexOf("   # ");
            int expected = mark < 0 ? 0 : Integer.parseInt(example.substring(mark + "   # ".length()));
            var words = example.substring(PROMPT.length(), mark < 0 ? example.length() : mark);
            var ended = new SpileJar(folder).start(List.of("sh", "-c", spile + " " + words));
            assertEquals(expected, ended.status(), () -> example + "\n" + ended.out() + ended.err());
        }
    }

    @Test
    void everyOptionOfTheHelpIsOnThePage() throws Exception {
        var page = Files.readString(PAGE);
        for (var command : List.of("start", "check", "draw")) {
            for (var option : options(command)) {
                assertTrue(page.contains("`" + option) || option.equals("--help"), command + " " + option);
            }
        }
    }

    private List<String> options(String command) throws IOException, InterruptedException {
        return new SpileJar(folder)
                .run(command, "--help")
                .out()
                .lines()
                .filter(line -> line.matches("  (-[a-z], )?--[a-z]+.*"))
                .map(line -> line.replaceFirst(".*?(--[a-z]+).*", "$1"))
                .toList();
    }
}
