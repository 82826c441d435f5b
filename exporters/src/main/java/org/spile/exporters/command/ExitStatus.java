package org.spile.exporters.command;

/** The process's exit statuses, the same for every command. */
enum ExitStatus {
    /** Nothing fails. */
    NOTHING_FAILS(0, "Nothing fails."),
    /** The input is sound and something in the house fails. */
    SOMETHING_FAILS(1, "Something in the house fails."),
    /** The command line, the input or the output can't be used. */
    UNUSABLE_INPUT(2, "The command line, the house file or the output folder can't be used."),
    /** Spile itself is at fault. */
    OWN_FAULT(3, "A fault of Spile's own.");

    private final int code;
    private final String says;

    ExitStatus(int code, String says) {
        this.code = code;
        this.says = says;
    }

    int code() {
        return code;
    }

    String says() {
        return says;
    }
}
