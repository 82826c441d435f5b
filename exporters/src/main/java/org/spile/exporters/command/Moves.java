package org.spile.exporters.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Moves of staged files into place that can be taken back, last first. */
final class Moves {
    private final StagedFiles staged;
    private final OutputFolder.Move move;
    private final Map<Path, Path> keptByPlace = new LinkedHashMap<>();
    private final Deque<Path> taken = new ArrayDeque<>();

    Moves(StagedFiles staged, OutputFolder.Move move) {
        this.staged = staged;
        this.move = move;
    }

    /** Keeps what stands at a place; to be asked for every place before the first move, for it may need room. */
    void keep(Path place) throws IOException {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            keptByPlace.put(place, staged.keep(place));
        }
    }

    void make(String name, Path place) throws IOException {
        move.into(staged.at(name), place);
        taken.push(place);
    }

    /** Puts everything back as it was; where even that fails, what was kept stays beside its place. */
    void takeBack() {
        while (!taken.isEmpty()) {
            var place = taken.pop();
            var kept = keptByPlace.get(place);
            try {
                if (kept == null) {
                    Files.deleteIfExists(place);
                } else if (Files.exists(kept, LinkOption.NOFOLLOW_LINKS)) {
                    move.into(kept, place);
                }
            } catch (IOException e) {
                staged.leave();
            }
        }
    }
}
