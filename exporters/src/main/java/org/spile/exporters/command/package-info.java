/**
 * The command a user starts: words in, answers on the terminal and files on disk, and an exit status.
 *
 * <p>Read {@link org.spile.exporters.command.Spile} first: the root command, to which each command is added in one
 * line. {@code Complaint} turns whatever went wrong into one line of error, one line of hint and a status.
 *
 * <p>May use every other package of Spile, and is the only one that knows picocli, the console and the process: nothing
 * else prints or exits. Computes nothing itself.
 */
package org.spile.exporters.command;
