package org.spile.samples.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places that can't be written to, through the real jar: a clear word, status 2, nothing written, nothing lost. */
class BadOutputTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void start() throws Exception {
        assertEquals(0, new SpileJar(folder).run("start", "hut").status());
    }

    @Test
    void outputIsAFile() throws Exception {
        Files.writeString(folder.resolve("sheets"), "mine");
        draw().assertUnusable("sheets is a file, not a folder", "nothing was changed");
        assertEquals("mine", Files.readString(folder.resolve("sheets")));
    }

    @Test
    void outputBelowAFile() throws Exception {
        Files.writeString(folder.resolve("sheets"), "mine");
        new SpileJar(folder)
                .run("draw", "hut/house.yaml", "-o", "sheets/deeper")
                .assertUnusable("sheets/deeper", "nothing was changed");
        assertEquals("mine", Files.readString(folder.resolve("sheets")));
    }

    @Test
    void foreignFileInTheWay() throws Exception {
        assertEquals(0, draw().status());
        var sheet = oneSheet();
        Files.writeString(sheet, "my own drawing");
        var before = contents();
        draw().assertUnusable(sheet.getFileName().toString(), "nothing was changed", "--force");
        assertEquals(before, contents());
        var forced = new SpileJar(folder).run("draw", "hut/house.yaml", "-o", "sheets", "--force");
        assertEquals(0, forced.status(), forced.err());
        assertFalse(Files.readString(sheet).equals("my own drawing"));
    }

    @Test
    void startNeverOverwrites() throws Exception {
        Files.writeString(folder.resolve("hut/house.yaml"), "title: mine\n");
        new SpileJar(folder).run("start", "hut").assertUnusable("hut/house.yaml is there already");
        assertEquals("title: mine\n", Files.readString(folder.resolve("hut/house.yaml")));
    }

    @Test
    void readOnlyFolder() throws Exception {
        var ended = inOwnMounts("mount -t tmpfs -o size=4m tmpfs sheets && mount -o remount,ro sheets", "ls -A sheets");
        ended.assertUnusable("can't write in sheets: read-only file system", "nothing was changed");
    }

    @Test
    void fullDisk() throws Exception {
        var ended = inOwnMounts(
                "mount -t tmpfs -o size=20k tmpfs sheets && echo mine > sheets/notes.txt",
                "ls -A sheets | grep -v notes.txt");
        ended.assertUnusable("can't write in sheets: no space left on device", "nothing was changed");
    }

    @Test
    void limitOnTheSizeOfFiles() throws Exception {
        var line = SpileJar.command(List.of("-XX:-UsePerfData"), "draw", "hut/house.yaml", "-o", "sheets");
        var ended = new SpileJar(folder).start(List.of("sh", "-c", "ulimit -f 4 && " + SpileJar.shell(line)));
        ended.assertUnusable("can't write in sheets: file too large", "nothing was changed");
        assertFalse(Files.exists(folder.resolve("sheets")));
    }

    @Test
    void fullStandardOutput() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "this system has no /dev/full");
        var line = SpileJar.command(List.of(), "check", "hut/house.yaml");
        var ended = new SpileJar(folder).start(List.of("sh", "-c", SpileJar.shell(line) + " > /dev/full"));
        ended.assertUnusable("the answer can't be written: no space left on device");
    }

    @Test
    void readerThatWentAway_isNoFault() throws Exception {
        var line = SpileJar.command(List.of(), "check", "hut/house.yaml");
        var ended = new SpileJar(folder).start(List.of("sh", "-c", SpileJar.shell(line) + " | true"));
        assertEquals("", ended.err());
    }

    /** Draws into a folder mounted for this one process, and prints what is left there. */
    private SpileJar.Ended inOwnMounts(String mount, String look) throws IOException, InterruptedException {
        Files.createDirectory(folder.resolve("sheets"));
        var tried = new ProcessBuilder("unshare", "--user", "--map-root-user", "--mount", "sh", "-c", mount)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        assumeTrue(mayMount(tried), "this machine lets no user mount a file system of their own");
        var line = SpileJar.command(List.of(), "draw", "hut/house.yaml", "-o", "sheets");
        var script = mount + " && { " + SpileJar.shell(line) + "; status=$?; " + look + "; exit $status; }";
        var words = new ArrayList<>(List.of("unshare", "--user", "--map-root-user", "--mount", "sh", "-c", script));
        return new SpileJar(folder).start(words);
    }

    private static boolean mayMount(ProcessBuilder tried) throws InterruptedException {
        try {
            return tried.start().waitFor() == 0;
        } catch (IOException noUnshare) {
            return false;
        }
    }

    private SpileJar.Ended draw() throws IOException, InterruptedException {
        return new SpileJar(folder).run("draw", "hut/house.yaml", "-o", "sheets");
    }

    private Path oneSheet() throws IOException {
        try (var paths = Files.list(folder.resolve("sheets"))) {
            return paths.filter(path -> path.toString().endsWith(".svg"))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
    }

    private SortedMap<String, String> contents() throws IOException {
        var found = new TreeMap<String, String>();
        try (var paths = Files.list(folder.resolve("sheets"))) {
            for (var path : (Iterable<Path>) paths::iterator) {
                found.put(path.getFileName().toString(), Files.readString(path, StandardCharsets.ISO_8859_1));
            }
        }
        assertTrue(found.size() > 1, found::toString);
        return found;
    }
}
