package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    private Path disk;

    @Test
    void newFolder_filesAndRecordAndNothingElse() throws IOException {
        var out = disk.resolve("a/b");
        var placing = assertInstanceOf(Placing.Placed.class, put(out, false, "plan.svg", "1", "plan.dxf", "2"));
        assertEquals(List.of(out.resolve("plan.svg"), out.resolve("plan.dxf")), placing.files());
        assertEquals(Map.of("plan.svg", "1", "plan.dxf", "2"), contents(out));
        assertTrue(Files.exists(out.resolve(OutputRecord.NAME)));
    }

    @Test
    void record_isWhatSha256sumWrites() throws IOException {
        put(disk, false, "plan.svg", "abc");
        // FIPS 180-4, the example "abc" of SHA-256 in NIST's published example values.
        var digest = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assertEquals(
                digest + "  plan.svg",
                Files.readAllLines(disk.resolve(OutputRecord.NAME)).get(1));
    }

    @Test
    void ownUnchangedFile_isReplaced() throws IOException {
        put(disk, false, "plan.svg", "old");
        assertInstanceOf(Placing.Placed.class, put(disk, false, "plan.svg", "new"));
        assertEquals(Map.of("plan.svg", "new"), contents(disk));
    }

    @Test
    void ownFileSomebodyChanged_isTheirsNow() throws IOException {
        put(disk, false, "plan.svg", "old", "plan.dxf", "old");
        Files.writeString(disk.resolve("plan.dxf"), "old, and my notes");
        assertRefused("changed since", "plan.dxf", put(disk, false, "plan.svg", "new", "plan.dxf", "new"));
        assertEquals(Map.of("plan.svg", "old", "plan.dxf", "old, and my notes"), contents(disk));
    }

    @Test
    void foreignFile_staysWithoutForceAndGoesWithIt() throws IOException {
        Files.writeString(disk.resolve("plan.svg"), "mine");
        assertRefused("not written by Spile", "plan.svg", put(disk, false, "plan.svg", "new"));
        assertEquals(Map.of("plan.svg", "mine"), contents(disk));
        assertInstanceOf(Placing.Placed.class, put(disk, true, "plan.svg", "new"));
        assertEquals(Map.of("plan.svg", "new"), contents(disk));
    }

    @Test
    void foreignFileWithTheVeryBytes_isNoObstacle() throws IOException {
        Files.writeString(disk.resolve("plan.svg"), "same");
        assertInstanceOf(Placing.Placed.class, put(disk, false, "plan.svg", "same"));
    }

    @Test
    void foreignRecord_isNotTrustedAndNotOverwritten() throws IOException {
        Files.writeString(disk.resolve(OutputRecord.NAME), "my list\n");
        assertRefused("not written by Spile", OutputRecord.NAME, put(disk, false, "plan.svg", "new"));
        assertEquals("my list\n", Files.readString(disk.resolve(OutputRecord.NAME)));
    }

    @Test
    void symbolicLink_isForeignAndItsTargetIsNeverWritten() throws IOException {
        var target = Files.writeString(disk.resolve("target.txt"), "far away");
        var out = Files.createDirectory(disk.resolve("out"));
        Files.createSymbolicLink(out.resolve("plan.svg"), target);
        assertRefused("not written by Spile", "plan.svg", put(out, false, "plan.svg", "new"));
        assertInstanceOf(Placing.Placed.class, put(out, true, "plan.svg", "new"));
        assertEquals("far away", Files.readString(target));
        assertEquals("new", Files.readString(out.resolve("plan.svg")));
    }

    @Test
    void folderOfThatName_isNeverReplaced() throws IOException {
        Files.createDirectory(disk.resolve("plan.svg"));
        assertRefused("a folder stands in the way", "plan.svg", put(disk, true, "plan.svg", "new"));
        assertTrue(Files.isDirectory(disk.resolve("plan.svg")));
    }

    @Test
    void outputIsAFile_refused() throws IOException {
        var file = Files.writeString(disk.resolve("out"), "a file");
        assertRefused("is a file, not a folder", "out", put(file, true, "plan.svg", "new"));
        assertRefused("can't write in", "out", put(file.resolve("below"), true, "plan.svg", "new"));
        assertEquals("a file", Files.readString(file));
    }

    @Test
    void contentThatFails_leavesNothingBehind() throws IOException {
        var files = new LinkedHashMap<String, FileContent>();
        files.put("plan.svg", out -> out.write(1));
        files.put("plan.dxf", out -> {
            throw new IOException("this format", new IllegalStateException(new IOException("No space left on device")));
        });
        assertRefused(
                "no space left on device",
                "new",
                OutputFolder.at(disk.resolve("new/deep")).put(files, false));
        assertFalse(Files.exists(disk.resolve("new")));
    }

    @Test
    void faultOfOurOwnInAContent_leavesNothingBehind() {
        var folder = disk.resolve("new");
        Map<String, FileContent> files = Map.of("plan.svg", out -> {
            throw new IllegalStateException("ours");
        });
        assertThrows(IllegalStateException.class, () -> OutputFolder.at(folder).put(files, false));
        assertFalse(Files.exists(folder));
    }

    @Test
    void moveThatFails_putsEverythingBack() throws IOException {
        put(disk, false, "a.svg", "old a", "b.svg", "old b", "c.svg", "old c");
        Files.writeString(disk.resolve("b.svg"), "changed by hand");
        var before = Files.readString(disk.resolve(OutputRecord.NAME));
        for (int failing = 1; failing <= 5; failing++) {
            assertRefused("can't write in", "device", failingAt(failing));
            assertEquals(
                    Map.of("a.svg", "old a", "b.svg", "changed by hand", "c.svg", "old c"),
                    contents(disk),
                    "move " + failing);
            assertEquals(before, Files.readString(disk.resolve(OutputRecord.NAME)), "move " + failing);
        }
    }

    @Test
    void onlyOne_neverReplacesAndIsNotRecorded() throws IOException {
        var folder = OutputFolder.at(disk.resolve("hut"));
        assertInstanceOf(Placing.Placed.class, folder.putOnly("house.yaml", text("mine from now on")));
        assertRefused("is there already", "house.yaml", folder.putOnly("house.yaml", text("mine from now on")));
        assertEquals(Map.of("house.yaml", "mine from now on"), contents(disk.resolve("hut")));
        assertFalse(Files.exists(disk.resolve("hut").resolve(OutputRecord.NAME)));
    }

    @Test
    void nameWithAFolderInIt_isTheCallersFault() {
        assertThrows(IllegalArgumentException.class, () -> put(disk, false, "../plan.svg", "x"));
    }

    private Placing failingAt(int failing) {
        var count = new int[] {0};
        OutputFolder.Move move = (from, place) -> {
            if (++count[0] == failing) {
                throw new IOException("Input/output error on the device");
            }
            Files.move(from, place, StandardCopyOption.ATOMIC_MOVE);
        };
        return new OutputFolder(disk, move).put(files("a.svg", "new a", "b.svg", "new b", "c.svg", "new c"), true);
    }

    private static Placing put(Path folder, boolean force, String... namesAndTexts) {
        return OutputFolder.at(folder).put(files(namesAndTexts), force);
    }

    private static Map<String, FileContent> files(String... namesAndTexts) {
        var files = new LinkedHashMap<String, FileContent>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], text(namesAndTexts[i + 1]));
        }
        return files;
    }

    private static FileContent text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertRefused(String error, String about, Placing placing) {
        var why = assertInstanceOf(Placing.Refused.class, placing).why();
        assertTrue(why.error().contains(error), why.error());
        assertTrue(why.error().contains(about), why.error());
    }

    /** Every file of a folder but the record, so that a forgotten rest shows. */
    private static Map<String, String> contents(Path folder) throws IOException {
        var found = new TreeMap<String, String>();
        try (var paths = Files.newDirectoryStream(folder)) {
            for (var path : paths) {
                if (!path.endsWith(OutputRecord.NAME)) {
                    found.put(
                            path.getFileName().toString(),
                            Files.isDirectory(path) ? "(folder)" : Files.readString(path));
                }
            }
        }
        return found;
    }
}
