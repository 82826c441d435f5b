/**
 * The command a user starts: words in, answers on the terminal and files on disk, and an exit status.
 *
 * <p>Read {@link org.spile.exporters.command.Spile} first: the root command, with the list to which each {@code Command}
 * is added in one line. {@code WordSorter} reads the words, {@code HelpText} prints the help out of the same {@code
 * Usage}; {@code OutputFolder} puts files on disk, all or none. What the user got wrong is a {@code Refusal}: one line
 * of error, one line of hint.
 *
 * <p>May use every other package of Spile, and is the only one that knows the option library, the console and the
 * process: nothing else prints or exits. Computes nothing itself.
 */
package org.spile.exporters.command;
