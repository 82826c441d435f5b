package org.spile.exporters.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which files of a folder Spile wrote, and what was in them: the file {@value #NAME} beside them.
 *
 * <p>One line a file: its SHA-256 in hexadecimal digits, two blanks, its name; the form that {@code sha256sum --check}
 * reads, below one line of comment. A file counts as Spile's only while its content is what the record says, so a
 * drawing that somebody went on working on is theirs from the first change.
 */
final class OutputRecord {
    static final String NAME = ".spile-files";
    private static final String FIRST_LINE =
            "# Files written by Spile; it replaces them only while they are unchanged.";
    private static final int DIGITS = 64;

    private final Map<String, Set<String>> digestsByName;

    private OutputRecord(Map<String, Set<String>> digestsByName) {
        this.digestsByName = digestsByName;
    }

    static OutputRecord empty() {
        return new OutputRecord(Collections.emptyNavigableMap());
    }

    /** The record of a folder; nothing is Spile's where there is none, or none that Spile wrote. */
    static OutputRecord in(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return empty();
        }
        var lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (lines.isEmpty() || !lines.get(0).equals(FIRST_LINE)) {
            return empty();
        }
        var found = empty();
        for (var line : lines.subList(1, lines.size())) {
            if (line.length() > DIGITS + 2) {
                found = found.with(line.substring(DIGITS + 2), line.substring(0, DIGITS));
            }
        }
        return found;
    }

    /** Whether something else than a record of Spile's stands in its place. */
    static boolean isBlockedIn(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                && !(Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && Files.readString(file, StandardCharsets.ISO_8859_1).startsWith(FIRST_LINE));
    }

    boolean owns(String name, String digest) {
        return digestsByName.getOrDefault(name, Set.of()).contains(digest);
    }

    /** This record, a further content of a file counting as Spile's. */
    OutputRecord with(String name, String digest) {
        var more = new TreeMap<>(digestsByName);
        var digests = new TreeSet<>(more.getOrDefault(name, Set.of()));
        digests.add(digest);
        more.put(name, digests);
        return new OutputRecord(more);
    }

    /** This record without what it says of some files. */
    OutputRecord without(Collection<String> names) {
        var fewer = new TreeMap<>(digestsByName);
        fewer.keySet().removeAll(names);
        return new OutputRecord(fewer);
    }

    byte[] bytes() {
        var text = new StringBuilder(FIRST_LINE).append('\n');
        digestsByName.forEach((name, digests) -> digests.forEach(
                digest -> text.append(digest).append("  ").append(name).append('\n')));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
