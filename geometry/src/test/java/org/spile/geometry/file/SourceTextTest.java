package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTextTest {
    @TempDir
    Path folder;

    @Test
    void text_isReadWithoutItsByteOrderMark() {
        assertEquals("Legible[text=a: \u00bd\n, marked=false]", bytes("a: \u00bd\n".getBytes(StandardCharsets.UTF_8)));
        assertEquals("Legible[text=a: 1\n, marked=true]", bytes("\ufeffa: 1\n".getBytes(StandardCharsets.UTF_8)));
        assertEquals("Legible[text=, marked=false]", bytes(new byte[0]));
    }

    @Test
    void whatIsNoText_isRefusedWithItsPlace() {
        assertEquals(
                "h:2:4: This is not a text file. Save it as plain text in UTF-8.",
                bytes(new byte[] {'a', '\n', 'b', 'c', 'd', 0, 1}));
        assertEquals(
                "h:1:1: This is not a text file. Save it as plain text in UTF-8.", bytes(new byte[] {0, (byte) 0xff}));
        assertEquals(
                "h:1:7: The text is not UTF-8 from here on. Save it as UTF-8.",
                bytes("a: 208\u00b13".getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals("h: This is UTF-16 text. Save it as UTF-8.", bytes("a: 1".getBytes(StandardCharsets.UTF_16)));
        assertEquals(
                "h: This is UTF-16 text. Save it as UTF-8.", bytes("\ufeffa: 1".getBytes(StandardCharsets.UTF_16LE)));
        assertEquals(
                "h:1:4: An invisible character stands here (U+001b). Take it out.",
                bytes("a: \u001b[31m".getBytes(StandardCharsets.UTF_8)));
        assertEquals(
                "h:1:3: An invisible character stands here (U+feff). Take it out.",
                bytes("a:\ufeff 1".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void files_thatCantBeUsed() throws IOException {
        Files.writeString(folder.resolve("house.yaml"), "title: x\n");
        assertEquals("Legible[text=title: x\n, marked=false]", read("house.yaml"));
        assertEquals("h: This is a folder. Name a file in it.", read("."));
        assertEquals("h: There is no such file. Nearest: \"house.yaml\".", read("hose.yaml"));
        assertEquals("h: There is no such file.", read("cellar.txt"));
    }

    @Test
    void fiftyMegabytes_areRefusedUnread() throws IOException {
        try (var file = new RandomAccessFile(folder.resolve("large.yaml").toFile(), "rw")) {
            file.setLength(50L * 1024 * 1024);
        }
        assertEquals("h: This file is larger than 8 MiB. No house needs so much.", read("large.yaml"));
    }

    private String read(String name) {
        return shown(SourceText.read(folder.resolve(name), "h"));
    }

    private static String bytes(byte[] bytes) {
        return shown(SourceText.of(bytes, "h"));
    }

    private static String shown(SourceText text) {
        return text instanceof SourceText.Unusable unusable
                ? unusable.problem().toString().strip()
                : text.toString();
    }
}
