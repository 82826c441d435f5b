package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.io.TempDir;

/**
 * House files that can't be used, through the real jar: each is told with file, line and column, ends with status 2, and
 * leaves the disk as it was. What each printed is gathered in {@code samples/target/bad-input}.
 */
class BadInputTest {
    private static final String LOFT = "cavities:\n  loft:\n    long: 1650\n    wide: 900\n    high: 262\n";

    @TempDir
    private Path folder;

    @Test
    void emptyFile(TestInfo test) throws Exception {
        house("");
        assertBad(test, "house.yaml: ", "nothing in this file");
    }

    @Test
    void commentsOnly(TestInfo test) throws Exception {
        house("# nothing yet\n");
        assertBad(test, "house.yaml: ", "nothing in this file");
    }

    @Test
    void noSuchFile(TestInfo test) throws Exception {
        Files.writeString(folder.resolve("hous.yaml"), LOFT);
        assertBad(test, "house.yaml: ", "no such file", "Nearest: \"hous.yaml\"");
    }

    @Test
    void directory(TestInfo test) throws Exception {
        Files.createDirectory(folder.resolve("house.yaml"));
        assertBad(test, "house.yaml: ", "This is a folder.");
    }

    @Test
    void binary(TestInfo test) throws Exception {
        var bytes = new byte[4096];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 31 + i / 256);
        }
        Files.write(folder.resolve("house.yaml"), bytes);
        assertBad(test, "house.yaml:1:1: ", "not a text file");
    }

    @Test
    void fiftyMegabytes(TestInfo test) throws Exception {
        house("# " + "x".repeat(50 * 1024 * 1024) + "\n" + LOFT);
        assertBad(test, "house.yaml: ", "larger than 8 MiB");
    }

    @Test
    void tabs(TestInfo test) throws Exception {
        house("cavities:\n\tloft:\n\t\tlong: 1650\n");
        assertBad(test, "house.yaml:2:1: ", "A tab indents this line. Indent with spaces.");
    }

    @Test
    void duplicateKeys(TestInfo test) throws Exception {
        house(LOFT + "    long: 1700\n");
        assertBad(test, "house.yaml:6:5: ", "\"long\"", "3");
    }

    @Test
    void aliasBomb(TestInfo test) throws Exception {
        var text = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c <= 'k'; c++) {
            var before = "*" + (char) (c - 1);
            text.append(c)
                    .append(": &")
                    .append(c)
                    .append(" [")
                    .append((before + ", ").repeat(9))
                    .append("x]\n");
        }
        house(text.toString());
        assertBad(test, "house.yaml:1:4: ", "&a");
    }

    @Test
    void deepNesting(TestInfo test) throws Exception {
        house("title: " + "[".repeat(100_000) + "\n");
        assertBad(test, "house.yaml:1:", "nested");
    }

    @Test
    void unknownKey(TestInfo test) throws Exception {
        house(LOFT.replace("high: 262", "depth: 262"));
        assertBad(test, "house.yaml:5:5: ", "has no \"depth\"", "\"high\"");
    }

    @Test
    void wrongUnit(TestInfo test) throws Exception {
        house(LOFT.replace("262", "262 kg"));
        assertBad(test, "house.yaml:5:11: ", "kg", "A length is");
    }

    @Test
    void notANumber(TestInfo test) throws Exception {
        house(LOFT.replace("262", ".nan"));
        assertBad(test, "house.yaml:5:11: ", ".nan");
    }

    @Test
    void negativeSize(TestInfo test) throws Exception {
        house(LOFT.replace("262", "-262"));
        assertBad(test, "house.yaml:5:11: ", "-262");
    }

    @Test
    void enormousSize(TestInfo test) throws Exception {
        house(LOFT.replace("262", "1e300"));
        assertBad(test, "house.yaml:5:11: ", "1e300");
    }

    @Test
    void enormousSizeInDigits(TestInfo test) throws Exception {
        house(LOFT.replace("262", "999999999"));
        assertBad(test, "house.yaml:5:11: ", "999999999");
    }

    @Test
    void selfCrossingOutline(TestInfo test) throws Exception {
        house("cavities:\n  loft:\n    outline: [[0, 0], [900, 900], [900, 0], [0, 900]]\n    high: 262\n");
        assertBad(test, "house.yaml:3:14: ", "cavities.loft.outline", "cross");
    }

    @Test
    void danglingName(TestInfo test) throws Exception {
        house(LOFT + "units:\n  cooler: {in: lofft, long: 450, wide: 700, high: 200}\n");
        assertBad(test, "house.yaml:7:16: ", "\"lofft\"", "\"loft\"");
    }

    @Test
    void outlinePathOutOfTheFolder(TestInfo test) throws Exception {
        house(outlineFrom("../secret.dxf, layer: A"));
        assertBad(test, "house.yaml:3:14: ", "../secret.dxf");
    }

    @Test
    void outlinePathFromTheRoot(TestInfo test) throws Exception {
        house(outlineFrom("/etc/passwd, layer: A"));
        assertBad(test, "house.yaml:3:14: ", "/etc/passwd");
    }

    @Test
    void outlineLinkOutOfTheFolder(TestInfo test) throws Exception {
        var outside = Files.writeString(Files.createTempFile("plan", ".dxf"), "0\nEOF\n");
        Files.createSymbolicLink(folder.resolve("plan.dxf"), outside);
        house(outlineFrom("plan.dxf, layer: A"));
        try {
            assertBad(test, "house.yaml:3:14: ", "plan.dxf");
        } finally {
            Files.delete(outside);
        }
    }

    @Test
    void brokenDxf(TestInfo test) throws Exception {
        Files.writeString(folder.resolve("plan.dxf"), "  0\nSECTION\n  2\nENTITIES\n  0\nLWPOLYLINE\n 10\nabc\n");
        house(outlineFrom("plan.dxf, layer: A"));
        assertBad(test, "plan.dxf", "house.yaml:3:");
    }

    @Test
    void brokenGeoJson(TestInfo test) throws Exception {
        Files.writeString(folder.resolve("plan.geojson"), "{\"type\": \"Feature\", \"geometry\": {\"type\": ");
        house(outlineFrom("plan.geojson, id: a, unit: mm"));
        assertBad(test, "plan.geojson", "house.yaml:3:");
    }

    @Test
    void twoFaultsAtOnce(TestInfo test) throws Exception {
        house(LOFT.replace("262", "262 kg") + "    depht: 5\n");
        assertBad(test, "house.yaml:5:11: ", "house.yaml:6:5: ", "2 problems");
    }

    private static String outlineFrom(String words) {
        return "cavities:\n  loft:\n    outline: {from: " + words + "}\n    high: 262\n";
    }

    private void house(String text) throws IOException {
        Files.writeString(folder.resolve("house.yaml"), text);
    }

    /** Checks and draws it: the same words both times, and nothing on the disk is new, gone or changed. */
    private void assertBad(TestInfo test, String... words) throws IOException, InterruptedException {
        var before = listing();
        var jar = new SpileJar(folder);
        var checked = jar.run("check", "house.yaml");
        gather(test.getTestMethod().orElseThrow().getName(), checked.err());
        checked.assertUnusable(words);
        var drawn = jar.run("draw", "house.yaml", "-o", "sheets");
        drawn.assertUnusable(words);
        assertFalse(Files.exists(folder.resolve("sheets")));
        assertEquals(before, listing());
    }

    private SortedMap<String, Long> listing() throws IOException {
        var found = new TreeMap<String, Long>();
        try (var paths = Files.walk(folder)) {
            for (var path : (Iterable<Path>) paths::iterator) {
                found.put(
                        folder.relativize(path).toString(),
                        Files.getLastModifiedTime(path).toMillis());
            }
        }
        return found;
    }

    private static void gather(String name, String printed) throws IOException {
        var pages = Files.createDirectories(SpileJar.ROOT.resolve("samples/target/bad-input"));
        Files.write(pages.resolve(name + ".txt"), List.of(printed.stripTrailing()), StandardCharsets.UTF_8);
    }
}
