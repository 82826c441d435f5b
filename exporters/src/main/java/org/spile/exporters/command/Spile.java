package org.spile.exporters.command;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The root command: one house file in, findings and dimensioned drawings out. */
@Command(
        name = "spile",
        description = "Will it go in, will it work, and how do I build it? Answers from one house file.",
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        versionProvider = BuildVersion.class,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:nothing fails",
            "1:something in the house fails",
            "2:the command line or the input can't be used",
            "3:a fault of Spile's own"
        })
public final class Spile implements Runnable {

    @Spec
    private CommandSpec spec;

    private Spile() {}

    /**
     * Runs one command and ends the process with its exit status.
     *
     * @param words the command line's words
     */
    public static void main(String[] words) {
        var out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8));
        var err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8));
        System.exit(run(out, err, words));
    }

    /**
     * Runs one command without ending the process.
     *
     * @param out takes what was asked for
     * @param err takes complaints
     * @param words the command line's words
     * @return the exit status, 0 to 3
     */
    static int run(PrintWriter out, PrintWriter err, String... words) {
        var complaint = new Complaint();
        var status = new CommandLine(new Spile())
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler(complaint)
                .setExecutionExceptionHandler(complaint)
                .execute(words);
        out.flush();
        err.flush();
        return status;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command was given");
    }
}
