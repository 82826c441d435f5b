package org.spile.geometry.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.spile.geometry.kernel.measure.NearestName;

/** The text of a file, or the one problem that keeps it from being text. */
sealed interface SourceText {
    /** The most a file may hold: 8 MiB. A house takes some tens of kilobytes. */
    int MOST_BYTES = 8 * 1024 * 1024;

    /**
     * A legible text.
     *
     * @param text the text, without byte order mark
     * @param marked whether a byte order mark stood before it
     */
    record Legible(String text, boolean marked) implements SourceText {}

    /**
     * Not a text, not readable, or too large.
     *
     * @param problem why
     */
    record Unusable(Problem problem) implements SourceText {}

    /**
     * Reads a file, at most {@link #MOST_BYTES} of it.
     *
     * @param path the file
     * @param name what to call it in problems
     */
    static SourceText read(Path path, String name) {
        return read(path, name, true);
    }

    /**
     * As {@link #read}, for formats older than UTF-8: what is not UTF-8 is read byte by byte as ISO 8859-1, and invisible
     * characters but NUL are let through.
     */
    static SourceText readAnyCoding(Path path, String name) {
        return read(path, name, false);
    }

    private static SourceText read(Path path, String name, boolean strict) {
        if (Files.isDirectory(path)) {
            return unusable(name, "This is a folder.", "Name a file in it.");
        }
        if (Files.notExists(path)) {
            return unusable(
                    name,
                    "There is no such file.",
                    nearest(path).map(n -> "Nearest: \"" + n + "\".").orElse(""));
        }
        if (!Files.isRegularFile(path)) {
            return unusable(name, "This is not a file.", "");
        }
        try (InputStream in = Files.newInputStream(path)) {
            if (Files.size(path) > MOST_BYTES) {
                return tooLarge(name);
            }
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                return tooLarge(name);
            }
            return strict ? of(bytes, name) : loose(bytes, name);
        } catch (AccessDeniedException denied) {
            return unusable(name, "This file may not be read.", "Check its permissions.");
        } catch (IOException fault) {
            return unusable(name, "This file can't be read: " + fault.getMessage() + ".", "");
        }
    }

    private static SourceText loose(byte[] bytes, String name) {
        SourceText strict = of(bytes, name);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return strict instanceof Unusable && text.indexOf(0) < 0 ? new Legible(text, false) : strict;
    }

    /** The text of some bytes. */
    static SourceText of(byte[] bytes, String name) {
        boolean wide = bytes.length > 1 && ((bytes[0] & 0xff) ^ (bytes[1] & 0xff)) == 1 && (bytes[0] & 0xfe) == 0xfe;
        if (wide) {
            return unusable(name, "This is UTF-16 text.", "Save it as UTF-8.");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
        String text = chars.flip().toString();
        boolean marked = text.startsWith("\ufeff");
        String body = marked ? text.substring(1) : text;
        Optional<Integer> odd = firstOdd(body);
        if (odd.isPresent() && body.charAt(odd.get()) == 0) {
            return new Unusable(Problem.error(
                    at(name, body, odd.get()), "", "This is not a text file.", "Save it as plain text in UTF-8."));
        }
        if (result.isError()) {
            return new Unusable(Problem.error(
                    at(name, body, body.length()), "", "The text is not UTF-8 from here on.", "Save it as UTF-8."));
        }
        if (odd.isPresent()) {
            String code = Integer.toHexString(body.charAt(odd.get()) | 0x10000).substring(1);
            return new Unusable(Problem.error(
                    at(name, body, odd.get()),
                    "",
                    "An invisible character stands here (U+" + code + ").",
                    "Take it out."));
        }
        return new Legible(body, marked);
    }

    private static Optional<Integer> firstOdd(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = (c < ' ' && c != '\t' && c != '\n' && c != '\r') || (c >= 0x7f && c < 0xa0 && c != 0x85);
            if (control || c == '\ufeff' || c >= 0xfffe) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static Place at(String name, String text, int index) {
        int start = text.lastIndexOf('\n', index - 1) + 1;
        int line = 1
                + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
        return new Place(name, line, 1 + text.codePointCount(start, index));
    }

    private static SourceText tooLarge(String name) {
        return unusable(
                name, "This file is larger than " + MOST_BYTES / (1024 * 1024) + " MiB.", "No house needs so much.");
    }

    private static SourceText unusable(String name, String says, String advice) {
        return new Unusable(Problem.error(Place.whole(name), "", says, advice));
    }

    private static Optional<String> nearest(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        if (folder == null || path.getFileName() == null) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.limit(1000)
                    .map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
            return NearestName.of(path.getFileName().toString(), names);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
