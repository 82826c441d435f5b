package org.spile.exporters.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Folders that have to be made on the way to an output folder, to be taken away again if they stay empty. */
final class MadeFolders {
    private final List<Path> innermostFirst;

    private MadeFolders(List<Path> innermostFirst) {
        this.innermostFirst = innermostFirst;
    }

    static MadeFolders missingTo(Path folder) {
        var missing = new ArrayList<Path>();
        for (var path = folder.toAbsolutePath().normalize();
                path != null && Files.notExists(path);
                path = path.getParent()) {
            missing.add(path);
        }
        return new MadeFolders(missing);
    }

    void removeEmpty() {
        for (var path : innermostFirst) {
            try {
                Files.deleteIfExists(path);
            } catch (IOException notEmpty) {
                return;
            }
        }
    }
}
