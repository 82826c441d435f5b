package org.spile.exporters.command;

import java.io.PrintWriter;

/**
 * Where a command speaks.
 *
 * @param out what was asked for
 * @param err complaints
 * @param colour whether {@code out} is a screen that shows colours
 */
record Console(PrintWriter out, PrintWriter err, boolean colour) {

    /** Says one line of error and one of hint, and answers with the status that goes with them. */
    ExitStatus refuse(Refusal refusal) {
        complain(refusal.error(), refusal.hint());
        return ExitStatus.UNUSABLE_INPUT;
    }

    void complain(String error, String hint) {
        say("spile: " + error);
        hint(hint);
    }

    /** One line of what is wrong. */
    void say(String line) {
        err.print(oneLine(line) + "\n");
    }

    /** One line of what to do. */
    void hint(String line) {
        say("hint: " + line);
    }

    // Words from a file or a command line may hold anything; what a terminal would obey is shown as a question mark.
    private static String oneLine(String words) {
        var line = new StringBuilder();
        words.codePoints()
                .map(c -> c == '\n' || c == '\t' ? ' ' : Character.isISOControl(c) ? '?' : c)
                .forEach(line::appendCodePoint);
        return line.toString();
    }
}
