package org.spile.exporters.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The folder that a command line asks to write into, if it does. */
sealed interface Output {
    CommandOption WANTED = new CommandOption(
            "o",
            "output",
            "DIR",
            CommandOption.Stands.ONCE_OR_NOT,
            "Also writes files into this folder; it is made if it isn't there.");
    CommandOption FORCE =
            CommandOption.flag("force", "Writes also over files that Spile did not write, or that were changed since.");
    List<CommandOption> OPTIONS = List.of(WANTED, FORCE);

    /** Nothing is to be written. */
    record None() implements Output {}

    /** Not a folder's name. */
    record Bad(Refusal why) implements Output {}

    /**
     * A folder.
     *
     * @param folder which
     * @param force also over files that are not Spile's
     */
    record Into(Path folder, boolean force) implements Output {
        /** Writes files; a refusal if that can't be done. */
        Optional<Refusal> put(Map<String, FileContent> files, Console console) {
            var placing = OutputFolder.at(folder).put(files, force);
            if (placing instanceof Placing.Refused refused) {
                return Optional.of(refused.why());
            }
            ((Placing.Placed) placing).files().forEach(file -> console.err().print(file + "\n"));
            return Optional.empty();
        }
    }

    static Output in(Words words) {
        if (!words.has(WANTED.name())) {
            return words.has(FORCE.name())
                    ? new Bad(new Refusal("--force says how to write, but nothing is to be written", "add -o DIR"))
                    : new None();
        }
        try {
            return new Into(Path.of(words.value(WANTED.name())), words.has(FORCE.name()));
        } catch (InvalidPathException e) {
            return new Bad(new Refusal("not a folder's name: " + e.getMessage(), "write another name"));
        }
    }
}
