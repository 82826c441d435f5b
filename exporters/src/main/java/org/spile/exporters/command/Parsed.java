package org.spile.exporters.command;

/** What came of reading the words behind a command. */
sealed interface Parsed {
    /** They are in order. */
    record Sound(Words words) implements Parsed {}

    /** Help was asked for. */
    record HelpWanted() implements Parsed {}

    /** They aren't in order. */
    record Wrong(Refusal why) implements Parsed {}
}
