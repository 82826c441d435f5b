package org.spile.exporters.command;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Files made ready beside their target, in a folder of their own on the same disk, so that moving them into place needs no
 * room and can't stop halfway. Closing takes away whatever is left of it.
 */
final class StagedFiles implements AutoCloseable {
    private final Path room;
    private final Map<String, String> digests = new LinkedHashMap<>();
    private final AtomicBoolean left = new AtomicBoolean();

    private StagedFiles(Path room) {
        this.room = room;
    }

    static StagedFiles beside(Path targets) throws IOException {
        return new StagedFiles(Files.createTempDirectory(targets, ".spile-new-"));
    }

    /** Makes a file ready and counts it among {@link #digests}. */
    void add(String name, FileContent content) throws IOException {
        digests.put(name, write(name, content));
    }

    /** Makes a file ready that is not one of those asked for. */
    void addAside(String name, byte[] bytes) throws IOException {
        write(name, out -> out.write(bytes));
    }

    private String write(String name, FileContent content) throws IOException {
        var digest = sha256();
        try (var file = new BufferedOutputStream(Files.newOutputStream(at(name)));
                var out = new DigestOutputStream(file, digest)) {
            content.writeTo(out);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The SHA-256 of each, by name, in the order they were added. */
    Map<String, String> digests() {
        return Collections.unmodifiableMap(digests);
    }

    Path at(String name) {
        return room.resolve(name);
    }

    /** Keeps what stands at a place now, so that it can be put back. */
    Path keep(Path target) throws IOException {
        var kept = room.resolve(".kept-" + target.getFileName());
        try {
            return Files.createLink(kept, target);
        } catch (UnsupportedOperationException | IOException noLinksHere) {
            return Files.copy(target, kept, LinkOption.NOFOLLOW_LINKS);
        }
    }

    /** Leaves everything standing when closed, because something in it couldn't be put back. */
    void leave() {
        left.set(true);
    }

    static String digestOf(Path file) throws IOException {
        var digest = sha256();
        try (var in = Files.newInputStream(file)) {
            var block = new byte[1 << 16];
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                digest.update(block, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    @Override
    public void close() {
        if (left.get()) {
            return;
        }
        try (var remains = Files.newDirectoryStream(room)) {
            for (var file : remains) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(room);
        } catch (IOException e) {
            // What can't be taken away hurts nobody: no later run reads it, and the answer stands either way.
            return;
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
