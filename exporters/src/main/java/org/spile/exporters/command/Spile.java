package org.spile.exporters.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.spile.geometry.kernel.measure.NearestName;

/** The root command: one house file in, findings and dimensioned drawings out. */
public final class Spile {
    private final List<Command> commands;

    Spile(List<Command> commands) {
        this.commands = List.copyOf(commands);
    }

    /** Every command, in the order of the help. */
    static Spile withAllCommands() {
        return new Spile(List.of(
                new StartCommand(),
                new CheckCommand(),
                new DrawCommand(),
                new PlaceCommand(),
                new MeasureCommand(),
                new StudyCommand(),
                new ReckonDuctCommand()));
    }

    /**
     * Runs one command and ends the process with its exit status.
     *
     * @param words the command line's words
     */
    public static void main(String[] words) {
        var standardOut = new StandardOut(new FileOutputStream(FileDescriptor.out));
        var out = new PrintWriter(new OutputStreamWriter(standardOut, StandardCharsets.UTF_8));
        var err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8));
        var console = new Console(out, err, Terminal.showsColours());
        var status = withAllCommands().run(console, Arrays.asList(words));
        out.flush();
        if (standardOut.failed()) {
            status = standardOut.excuse().map(console::refuse).orElse(status);
        }
        err.flush();
        System.exit(status.code());
    }

    /** Runs one command without ending the process; no exception leaves it. */
    ExitStatus run(Console console, List<String> words) {
        try {
            return answer(console, words);
        } catch (RuntimeException | Error fault) {
            return OwnFault.told(fault, console);
        }
    }

    private ExitStatus answer(Console console, List<String> words) {
        if (words.isEmpty()) {
            return console.refuse(
                    new Refusal("no command was given", "it takes " + names() + "; `spile --help` says more"));
        }
        var first = words.get(0);
        if (first.equals("--help") || first.equals("-h")) {
            console.out().print(HelpText.root(commands));
            return ExitStatus.NOTHING_FAILS;
        }
        if (first.equals("--version")) {
            console.out().print("spile " + BuildVersion.number() + "\n");
            return ExitStatus.NOTHING_FAILS;
        }
        for (var command : commands) {
            var name = command.usage().nameWords();
            if (words.size() >= name.size() && words.subList(0, name.size()).equals(name)) {
                return run(command, console, words.subList(name.size(), words.size()));
            }
        }
        return topics(first).isEmpty() ? console.refuse(unknown(first)) : topic(console, words);
    }

    /** The commands whose names start with a word and have another behind it, as {@code reckon duct}. */
    private List<Command> topics(String first) {
        return commands.stream()
                .filter(command -> command.usage().name().startsWith(first + " "))
                .toList();
    }

    /** A topic is missing or misspelt, or help on all of them is wanted. */
    private ExitStatus topic(Console console, List<String> words) {
        var first = words.get(0);
        var topics = topics(first);
        var names = topics.stream()
                .map(command -> command.usage().name().substring(first.length() + 1))
                .toList();
        var second = words.size() < 2 ? "" : words.get(1);
        if (second.equals("--help") || second.equals("-h")) {
            console.out().print(HelpText.root(topics));
            return ExitStatus.NOTHING_FAILS;
        }
        var all = first + " takes " + String.join(", ", names);
        return console.refuse(
                second.isEmpty() || second.startsWith("-")
                        ? new Refusal(first + " needs a topic behind it", all)
                        : new Refusal("no topic \"" + second + "\" of " + first, meant(second, names, all)));
    }

    private static ExitStatus run(Command command, Console console, List<String> words) {
        var parsed = new WordSorter(command.usage()).sort(words);
        if (parsed instanceof Parsed.Sound sound) {
            return command.run(sound.words(), console);
        }
        if (parsed instanceof Parsed.Wrong wrong) {
            return console.refuse(wrong.why());
        }
        console.out().print(HelpText.of(command.usage()));
        return ExitStatus.NOTHING_FAILS;
    }

    private Refusal unknown(String word) {
        var options = List.of("--help", "--version");
        var known = commands.stream().map(command -> command.usage().name()).toList();
        return word.startsWith("-")
                ? new Refusal("no option " + word, meant(word, options, "before a command stand --help or --version"))
                : new Refusal("no command \"" + word + "\"", meant(word, known, "it takes " + names()));
    }

    private static String meant(String word, List<String> known, String otherwise) {
        return NearestName.of(word, known)
                .map(near -> "did you mean " + near + "?")
                .orElse(otherwise);
    }

    private String names() {
        return String.join(
                ", ", commands.stream().map(command -> command.usage().name()).toList());
    }
}
