package org.spile.exporters.table;

import java.io.IOException;
import java.util.List;

/** What the house file was understood to say, thing by thing: where a wrong side shows first. */
public final class EchoText {
    private EchoText() {}

    /**
     * Writes sentences under a heading, 80 columns wide, and an empty line behind them.
     *
     * @throws IOException if {@code out} does
     */
    public static void write(List<String> sentences, Appendable out) throws IOException {
        out.append("AS UNDERSTOOD\n");
        for (var sentence : sentences) {
            out.append(Paragraph.of("  ", "    ", sentence));
        }
        out.append('\n');
    }
}
