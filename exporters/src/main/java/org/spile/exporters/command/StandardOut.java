package org.spile.exporters.command;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The process's output, remembering why it couldn't be written, which a print writer forgets. */
final class StandardOut extends FilterOutputStream {
    private final List<IOException> troubles = new ArrayList<>();

    StandardOut(OutputStream out) {
        super(new BufferedOutputStream(out));
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            troubles.add(e);
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            troubles.add(e);
            throw e;
        }
    }

    boolean failed() {
        return !troubles.isEmpty();
    }

    /** What to say of it; nothing where the reader went away on purpose, as {@code head} does. */
    Optional<Refusal> excuse() {
        var words = DiskTrouble.words(troubles.get(0));
        return words.contains("broken pipe")
                ? Optional.empty()
                : Optional.of(new Refusal(
                        "the answer can't be written: " + words, "send it where there is room, or to the terminal"));
    }
}
