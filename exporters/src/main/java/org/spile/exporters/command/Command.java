package org.spile.exporters.command;

/** One command: what can be written behind its name, and what it then does. */
interface Command {
    /** Its name, words and help. */
    Usage usage();

    /** Does it; complaints about what was written go to the console, not into exceptions. */
    ExitStatus run(Words words, Console console);
}
