package org.spile.exporters.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** What a user reads when a command can't go on: one line of error, one line of hint, never a page of help. */
final class Complaint implements IParameterExceptionHandler, IExecutionExceptionHandler {

    @Override
    public int handleParseException(ParameterException trouble, String[] words) {
        var command = trouble.getCommandLine();
        print(command, trouble.getMessage(), hint(trouble));
        return ExitStatus.UNUSABLE_INPUT.code();
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult words) {
        var place = fault.getStackTrace().length == 0 ? "an unknown place" : fault.getStackTrace()[0].toString();
        print(
                command,
                String.format(Locale.ROOT, "a fault of Spile's own: %s at %s", fault, place),
                "the house file is not to blame; please report this line with the file that caused it");
        return ExitStatus.OWN_FAULT.code();
    }

    private static String hint(ParameterException trouble) {
        var nearest = trouble instanceof UnmatchedArgumentException unmatched
                ? unmatched.getSuggestions()
                : List.<String>of();
        var name = trouble.getCommandLine().getCommandSpec().qualifiedName();
        return nearest.isEmpty()
                ? "`" + name + " --help` shows what can be written here"
                : "did you mean " + nearest.stream().limit(3).collect(Collectors.joining(" or ")) + "?";
    }

    private static void print(CommandLine command, String error, String hint) {
        var err = command.getErr();
        err.println("spile: " + error.lines().collect(Collectors.joining(" ")));
        err.println("hint: " + hint);
        err.flush();
    }
}
