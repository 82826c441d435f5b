package org.spile.exporters.command;

/** The process's exit statuses, the same for every command. */
enum ExitStatus {
    /** Nothing fails. */
    NOTHING_FAILS(0),
    /** The input is sound and something in the house fails. */
    SOMETHING_FAILS(1),
    /** The command line or the input can't be used. */
    UNUSABLE_INPUT(2),
    /** Spile itself is at fault. */
    OWN_FAULT(3);

    private final int code;

    ExitStatus(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
