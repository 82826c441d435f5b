package org.spile.exporters.command;

import java.nio.file.Path;
import java.util.List;

/** What came of putting files into a folder: all of them are there, or none was touched. */
sealed interface Placing {
    /** All are there, in the order given. */
    record Placed(List<Path> files) implements Placing {
        public Placed {
            files = List.copyOf(files);
        }
    }

    /** None was touched. */
    record Refused(Refusal why) implements Placing {}
}
