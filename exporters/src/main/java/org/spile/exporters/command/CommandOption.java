package org.spile.exporters.command;

/**
 * A word that starts with dashes.
 *
 * @param letter its short form without the dash; empty if it has none
 * @param name its long form without the dashes
 * @param label what stands behind it, as {@code DIR}; empty if nothing does
 * @param stands how often it stands
 * @param says what it does
 */
record CommandOption(String letter, String name, String label, Stands stands, String says) {
    /** How often an option stands behind a command. */
    enum Stands {
        ONCE,
        ONCE_OR_NOT,
        ANY_TIMES
    }

    static CommandOption flag(String name, String says) {
        return new CommandOption("", name, "", Stands.ONCE_OR_NOT, says);
    }

    static CommandOption needed(String letter, String name, String label, String says) {
        return new CommandOption(letter, name, label, Stands.ONCE, says);
    }

    static CommandOption repeated(String name, String label, String says) {
        return new CommandOption("", name, label, Stands.ANY_TIMES, says + " May be repeated.");
    }

    /** As short as it can be typed: {@code -o DIR}. */
    String shortest() {
        return (letter.isEmpty() ? "--" + name : "-" + letter) + (label.isEmpty() ? "" : " " + label);
    }

    /** As it is typed: {@code -o, --output DIR}. */
    String typed() {
        return (letter.isEmpty() ? "" : "-" + letter + ", ") + "--" + name + (label.isEmpty() ? "" : " " + label);
    }
}
