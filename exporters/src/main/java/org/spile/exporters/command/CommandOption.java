package org.spile.exporters.command;

/**
 * A word that starts with dashes.
 *
 * @param letter its short form without the dash; empty if it has none
 * @param name its long form without the dashes
 * @param label what stands behind it, as {@code DIR}; empty if nothing does
 * @param repeats whether it may stand more than once
 * @param says what it does
 */
record CommandOption(String letter, String name, String label, boolean repeats, String says) {
    static CommandOption flag(String name, String says) {
        return new CommandOption("", name, "", false, says);
    }

    static CommandOption once(String letter, String name, String label, String says) {
        return new CommandOption(letter, name, label, false, says);
    }

    static CommandOption repeated(String name, String label, String says) {
        return new CommandOption("", name, label, true, says + " May be repeated.");
    }

    /** As it is typed: {@code -o, --output DIR}. */
    String typed() {
        return (letter.isEmpty() ? "" : "-" + letter + ", ") + "--" + name + (label.isEmpty() ? "" : " " + label);
    }
}
