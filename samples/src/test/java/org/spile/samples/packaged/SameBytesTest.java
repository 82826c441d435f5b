package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Same input, same bytes: run to run, in a language with a decimal comma, and in one with digits of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SameBytesTest {
    private static final String HOUSE =
            SpileJar.ROOT.resolve("samples/saltmarsh/house.yaml").toString();

    private Path folder;
    private SpileJar.Ended text;
    private SpileJar.Ended json;

    @BeforeAll
    void here(@TempDir Path empty) throws Exception {
        folder = empty;
        text = new SpileJar(folder).run("check", HOUSE);
        json = new SpileJar(folder).run("check", HOUSE, "--json");
        assertTrue(text.status() < 2, text.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=en",
                "-Duser.language=de -Duser.country=DE",
                "-Duser.language=ar -Duser.country=EG -Duser.extensions=nu-arab",
                "-Duser.language=tr -Dfile.encoding=ISO-8859-9 -Duser.timezone=Asia/Kathmandu -Dline.separator=|",
                "-XX:+UnlockExperimentalVMOptions -XX:hashCode=2"
            })
    void check_everywhereTheSame(String java) throws Exception {
        var flags = List.of(java.split(" ", -1));
        assertEquals(text, new SpileJar(folder).run(flags, "check", HOUSE));
        assertEquals(json, new SpileJar(folder).run(flags, "check", HOUSE, "--json"));
    }

    @Test
    void draw_twiceAndInAnotherCountry() throws Exception {
        draw(List.of(), "one");
        draw(List.of(), "two");
        draw(
                List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=nu-arab", "-Dline.separator=|"),
                "three");
        var one = contents("one");
        assertTrue(one.size() > 2, () -> one.keySet().toString());
        for (var other : List.of("two", "three")) {
            var contents = contents(other);
            assertEquals(one.keySet(), contents.keySet());
            one.forEach((name, bytes) -> assertArrayEquals(bytes, contents.get(name), name));
        }
    }

    @Test
    void measureAndStudy_everywhereTheSame() throws Exception {
        var loft = SpileJar.ROOT.resolve("samples/loft/house.yaml").toString();
        var abroad = List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=nu-arab");
        var measure = List.of("measure", loft, "-o", "tape");
        var study = List.of("study", loft, "--vary", "cavities.loft.ceiling.drop=0..1 by 0.5", "-o", "study");
        for (var words : List.of(measure, study)) {
            var home = new SpileJar(folder).run(List.of(), words.toArray(String[]::new));
            var before = contents(words.get(words.size() - 1));
            assertEquals(home, new SpileJar(folder).run(abroad, words.toArray(String[]::new)));
            var after = contents(words.get(words.size() - 1));
            assertEquals(before.keySet(), after.keySet());
            before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
        }
    }

    @Test
    void help_everywhereTheSame() throws Exception {
        var plain = new SpileJar(folder).run("check", "--help");
        assertEquals(
                plain,
                new SpileJar(folder)
                        .run(
                                List.of("-Duser.language=ar", "-Duser.country=EG", "-Dline.separator=|"),
                                "check",
                                "--help"));
    }

    private void draw(List<String> java, String to) throws IOException, InterruptedException {
        var ended = new SpileJar(folder).run(java, "draw", HOUSE, "-o", to);
        assertTrue(ended.status() < 2, ended.err());
    }

    private SortedMap<String, byte[]> contents(String name) throws IOException {
        var found = new TreeMap<String, byte[]>();
        try (var paths = Files.list(folder.resolve(name))) {
            for (var path : (Iterable<Path>) paths::iterator) {
                found.put(path.getFileName().toString(), Files.readAllBytes(path));
            }
        }
        return found;
    }
}
