package org.spile.exporters.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A folder that Spile puts files into: all of them or none, and never over somebody else's work.
 *
 * <p>Everything is made ready beside its place first; then what stands there is looked at; then all is moved. Whatever goes
 * wrong on the way, the folder is as it was. Whose a file is says {@link OutputRecord}.
 */
final class OutputFolder {
    private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");
    private static final String UNTOUCHED = "nothing was changed; name a folder that can be written to and has room";

    private final Path folder;
    private final Move move;

    /** How a file is moved into place, over whatever is there. */
    @FunctionalInterface
    interface Move {
        void into(Path from, Path place) throws IOException;
    }

    /** What follows when everything is ready. */
    @FunctionalInterface
    private interface Step {
        Placing with(StagedFiles staged) throws IOException;
    }

    OutputFolder(Path folder, Move move) {
        this.folder = folder;
        this.move = move;
    }

    static OutputFolder at(Path folder) {
        return new OutputFolder(folder, (from, place) -> Files.move(from, place, StandardCopyOption.ATOMIC_MOVE));
    }

    /**
     * Puts files in.
     *
     * @param files by plain name, without folders
     * @param force also over files that are not Spile's
     */
    Placing put(Map<String, FileContent> files, boolean force) {
        return inFolder(files, staged -> {
            var record = OutputRecord.in(folder);
            var blocked = blocked(staged.digests(), record, force);
            return blocked.isEmpty() ? place(staged, record) : inTheWay(blocked, force);
        });
    }

    /**
     * Puts one file in that is the user's from then on: it is not recorded, and never replaces another.
     *
     * @param name a plain name, without folders
     */
    Placing putOnly(String name, FileContent content) {
        return inFolder(Map.of(name, content), staged -> {
            var place = folder.resolve(name);
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                return refused(place + " is there already", "nothing was changed; name another folder");
            }
            move.into(staged.at(name), place);
            return new Placing.Placed(List.of(place));
        });
    }

    private Placing inFolder(Map<String, FileContent> files, Step step) {
        for (var name : files.keySet()) {
            if (!PLAIN_NAME.matcher(name).matches()) {
                throw new IllegalArgumentException("not a plain file name: \"" + name + "\"");
            }
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return refused(folder + " is a file, not a folder", "nothing was changed; name another folder");
        }
        var made = MadeFolders.missingTo(folder);
        try {
            Files.createDirectories(folder);
            try (var staged = StagedFiles.beside(folder)) {
                for (var file : files.entrySet()) {
                    staged.add(file.getKey(), file.getValue());
                }
                return step.with(staged);
            }
        } catch (IOException e) {
            return refused("can't write in " + folder + ": " + DiskTrouble.words(e), UNTOUCHED);
        } finally {
            made.removeEmpty();
        }
    }

    private List<String> blocked(Map<String, String> digests, OutputRecord record, boolean force) throws IOException {
        var blocked = new ArrayList<String>();
        if (OutputRecord.isBlockedIn(folder) && !force) {
            blocked.add(OutputRecord.NAME);
        }
        for (var file : digests.entrySet()) {
            var place = folder.resolve(file.getKey());
            if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS) || (!force && isForeign(place, file, record))) {
                blocked.add(file.getKey());
            }
        }
        return blocked;
    }

    private static boolean isForeign(Path place, Map.Entry<String, String> wanted, OutputRecord record)
            throws IOException {
        if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        var there = StagedFiles.digestOf(place);
        return !there.equals(wanted.getValue()) && !record.owns(wanted.getKey(), there);
    }

    private Placing inTheWay(List<String> blocked, boolean force) {
        var names = String.join(", ", blocked);
        return force
                ? refused("a folder stands in the way in " + folder + ": " + names, "nothing was changed; move it away")
                : refused(
                        "not written by Spile, or changed since, in " + folder + ": " + names,
                        "nothing was changed; move these away, name another folder, or write over them with --force");
    }

    // The record comes first and then names the old and the new contents both: wherever the process dies, each file
    // that is there is still known to be Spile's.
    private Placing place(StagedFiles staged, OutputRecord record) throws IOException {
        var during = record;
        var after = record.without(staged.digests().keySet());
        for (var file : staged.digests().entrySet()) {
            during = during.with(file.getKey(), file.getValue());
            after = after.with(file.getKey(), file.getValue());
        }
        staged.addAside(".during", during.bytes());
        staged.addAside(".after", after.bytes());
        var moves = new Moves(staged, move);
        var recordPlace = folder.resolve(OutputRecord.NAME);
        moves.keep(recordPlace);
        for (var name : staged.digests().keySet()) {
            moves.keep(folder.resolve(name));
        }
        var placed = new ArrayList<Path>();
        try {
            moves.make(".during", recordPlace);
            for (var name : staged.digests().keySet()) {
                moves.make(name, folder.resolve(name));
                placed.add(folder.resolve(name));
            }
            moves.make(".after", recordPlace);
        } catch (IOException e) {
            moves.takeBack();
            throw e;
        }
        return new Placing.Placed(placed);
    }

    private static Placing refused(String error, String hint) {
        return new Placing.Refused(new Refusal(error, hint));
    }
}
