package org.spile.samples.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.spile.samples.layers.SourceRules.Source;

/** The project's sources keep the rules; each rule's twin, beside it, shows that it can fail. */
class SourceRulesTest {

    private static final List<String> NOTHING = List.of();

    private static List<Source> main;
    private static List<Source> tests;

    @BeforeAll
    static void read() throws IOException {
        main = Tree.sources("src/main/java");
        tests = Tree.sources("src/test/java");
        assertFalse(main.isEmpty());
        assertFalse(tests.isEmpty());
    }

    private static List<Source> wrong(String path, String... lines) {
        return List.of(new Source(path, String.join("\n", lines)));
    }

    @Test
    void publicTypesAreDocumented() throws IOException {
        assertEquals(NOTHING, SourceRules.undocumented(main));
    }

    @Test
    void publicTypesAreDocumented_twin() throws IOException {
        var bare = wrong("a/Bare.java", "package a;", "public record Bare(int x) {}");
        var endless = wrong("a/Endless.java", "package a;", "/** Never ends */", "public enum Endless {}");
        var nested = wrong(
                "a/Outer.java",
                "package a;",
                "/** An outer. */",
                "public class Outer {",
                "public interface Inner {}",
                "}");
        assertEquals(
                List.of("Bare is public; its doc comment's first sentence reads: nothing"),
                SourceRules.undocumented(bare));
        assertEquals(
                List.of("Endless is public; its doc comment's first sentence reads: Never ends"),
                SourceRules.undocumented(endless));
        assertEquals(
                List.of("Inner is public; its doc comment's first sentence reads: nothing"),
                SourceRules.undocumented(nested));
        var sound = wrong("a/Sound.java", "package a;", "/** A {@code sound} one. More. */", "public class Sound {}");
        assertEquals(NOTHING, SourceRules.undocumented(sound));
    }

    @Test
    void formulasHaveTests() throws IOException {
        assertEquals(NOTHING, SourceRules.untestedFormulas(main, tests));
    }

    @Test
    void formulasHaveTests_twin() throws IOException {
        var formula =
                wrong("a/Sag.java", "package a;", "final class Sag {", "static final String SOURCE = \"b\";", "}");
        assertEquals(
                List.of("Sag has a SOURCE and no SagTest"),
                SourceRules.untestedFormulas(formula, wrong("a/OtherTest.java", "")));
        assertEquals(NOTHING, SourceRules.untestedFormulas(formula, wrong("a/SagTest.java", "")));
    }

    @Test
    void packagesHaveTours() {
        assertEquals(NOTHING, SourceRules.packagesWithoutTour(main));
    }

    @Test
    void packagesHaveTours_twin() {
        assertEquals(List.of("a/b/"), SourceRules.packagesWithoutTour(wrong("a/b/C.java", "")));
    }

    @Test
    void filesAreShort() {
        assertEquals(NOTHING, SourceRules.tooLong(main, 400));
        // Worked examples may take a little more room than code.
        assertEquals(NOTHING, SourceRules.tooLong(tests, 500));
    }

    @Test
    void filesAreShort_twin() {
        assertEquals(
                List.of("a/Long.java has more than 400 lines"),
                SourceRules.tooLong(wrong("a/Long.java", "\n".repeat(400), "end"), 400));
    }

    @Test
    void linesAreFinished() {
        assertEquals(NOTHING, SourceRules.lineFaults(main));
        assertEquals(NOTHING, SourceRules.lineFaults(tests));
    }

    @Test
    void linesAreFinished_twin() {
        for (var word : List.of("TO" + "DO", "FIX" + "ME", "@auth" + "or", "@SuppressWarnings(\"a" + "ll\")")) {
            assertEquals(
                    List.of("a/Later.java holds " + word),
                    SourceRules.lineFaults(wrong("a/Later.java", "// " + word + " later")));
        }
    }
}
