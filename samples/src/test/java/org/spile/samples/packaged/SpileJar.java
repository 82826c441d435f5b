package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Starts the packaged jar as a user does, in a folder of its own. */
final class SpileJar {
    static final Path ROOT = Path.of(System.getProperty("spile.root", "..")).toAbsolutePath();
    private static final Path JAR = ROOT.resolve("exporters/target/spile.jar");

    private final Path folder;

    SpileJar(Path folder) {
        this.folder = folder;
    }

    /** How a run ended. */
    record Ended(int status, String out, String err) {
        /** The input couldn't be used: every one of these words was said, and nothing that is meant for developers. */
        void assertUnusable(String... words) {
            assertEquals(2, status, err);
            assertEquals("", out);
            for (var word : words) {
                assertTrue(err.contains(word), () -> "should say \"" + word + "\": " + err);
            }
            assertFalse(err.contains("\tat ") || err.contains("Exception"), err);
            assertTrue(err.lines().count() >= 2, err);
            assertTrue(err.lines().reduce((before, last) -> last).orElse("").startsWith("hint: "), err);
        }
    }

    Ended run(String... words) throws IOException, InterruptedException {
        return start(command(List.of(), words));
    }

    /** With options for Java itself. */
    Ended run(List<String> java, String... words) throws IOException, InterruptedException {
        return start(command(java, words));
    }

    /** Any command line, such as a shell around {@link #command}. */
    Ended start(List<String> line) throws IOException, InterruptedException {
        var out = Files.createTempFile("spile", ".out");
        var err = Files.createTempFile("spile", ".err");
        try {
            var process = new ProcessBuilder(line)
                    .directory(folder.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            int status = process.waitFor();
            return new Ended(status, text(out), text(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    static List<String> command(List<String> java, String... words) {
        var line = new ArrayList<String>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.addAll(java);
        line.addAll(List.of("-jar", JAR.toString()));
        line.addAll(Arrays.asList(words));
        return line;
    }

    /** A command line as one line for a POSIX shell. */
    static String shell(List<String> line) {
        return String.join(
                " ",
                line.stream()
                        .map(word -> "'" + word.replace("'", "'\\''") + "'")
                        .toList());
    }

    private static String text(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }
}
