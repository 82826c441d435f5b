package org.spile.exporters.command;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** {@code start}: writes a new house file with comments, that checks at once. */
final class StartCommand implements Command {
    static final String HOUSE_FILE = "house.yaml";
    private static final String PATTERN = "start-house.yaml";

    @Override
    public Usage usage() {
        return new Usage(
                "start",
                "write a new house file with comments",
                List.of(new Usage.Operand(
                        "DIR", "the folder to put " + HOUSE_FILE + " in; it is made if it isn't there")),
                List.of(),
                List.of("The file is short, works at once, and is yours from then on: start never writes over a file."),
                List.of(new Usage.Example("start hut", "Writes hut/" + HOUSE_FILE + ".")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        final Path folder;
        try {
            folder = Path.of(words.operand(0));
        } catch (InvalidPathException e) {
            return console.refuse(new Refusal("not a folder's name: " + e.getMessage(), "write another name"));
        }
        var placing = OutputFolder.at(folder).putOnly(HOUSE_FILE, StartCommand::writePattern);
        if (placing instanceof Placing.Refused refused) {
            return console.refuse(refused.why());
        }
        var file = folder.resolve(HOUSE_FILE);
        console.out().print(file + " is there; now: spile check " + file + "\n");
        return ExitStatus.NOTHING_FAILS;
    }

    private static void writePattern(OutputStream out) throws IOException {
        try (var in = StartCommand.class.getResourceAsStream(PATTERN)) {
            if (in == null) {
                throw new IllegalStateException(PATTERN + " is missing beside " + StartCommand.class.getName());
            }
            in.transferTo(out);
        }
    }
}
