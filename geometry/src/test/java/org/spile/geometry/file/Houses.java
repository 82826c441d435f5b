package org.spile.geometry.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.spile.geometry.house.told.ToldHouse;

/** The house files of the tests. */
final class Houses {
    /** All of them. */
    static final List<String> NAMES = List.of("loft", "site-cabin", "boat-locker", "saltmarsh");

    private Houses() {}

    /** The words of one. */
    static String text(String name) {
        try (var in = Houses.class.getResourceAsStream(name + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The house that words tell; fails with all problems if there are any. */
    static ToldHouse sound(String text) {
        ReadResult result = HouseFile.readText("house.yaml", text);
        if (result instanceof ReadResult.Sound sound) {
            return sound.house();
        }
        throw new AssertionError(String.join("\n", lines(result)));
    }

    /** What is wrong with words, one line each. */
    static List<String> wrong(String text) {
        return lines(HouseFile.readText("house.yaml", text));
    }

    static List<String> lines(ReadResult result) {
        return result instanceof ReadResult.Wrong wrong
                ? wrong.problems().stream().map(Problem::toString).toList()
                : List.of();
    }

    /** A file of the project, from its root. */
    static Path inProject(String path) {
        return Path.of(System.getProperty("spile.root"), path);
    }

    /** Whether generated pages should be written anew rather than compared. */
    static boolean rewrites() {
        return Boolean.getBoolean("spile.rewrite");
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
