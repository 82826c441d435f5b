package org.spile.exporters.command;

import java.util.List;
import org.spile.geometry.file.Problem;
import org.spile.geometry.house.House;

/** What came of opening the house that a command line asks for. */
sealed interface Opened {
    /**
     * It is sound.
     *
     * @param file the house file as it was named
     * @param options the options applied, in that order
     * @param house in the stances asked for
     */
    record Sound(String file, List<String> options, House house) implements Opened {
        public Sound {
            options = List.copyOf(options);
        }
    }

    /** The file or an edit of it isn't in order; at least one problem. */
    record Wrong(List<Problem> problems) implements Opened {
        public Wrong {
            problems = List.copyOf(problems);
        }
    }

    /** The command line asks for what the house doesn't have. */
    record Refused(Refusal why) implements Opened {}
}
