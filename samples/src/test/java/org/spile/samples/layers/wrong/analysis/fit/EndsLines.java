package org.spile.samples.layers.wrong.analysis.fit;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;

/** Ends lines as the machine does. */
final class EndsLines {

    private EndsLines() {}

    static String ends() {
        return System.lineSeparator();
    }

    static void prints(PrintWriter out) {
        out.println("gap");
    }

    static void writes(BufferedWriter out) throws IOException {
        out.newLine();
    }
}
