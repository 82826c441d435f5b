package org.spile.exporters.command;

import java.util.ArrayList;
import java.util.List;
import org.spile.exporters.command.CommandOption.Stands;

/**
 * A command as it is written: its name, the words behind it, its options, and what a learner wants to read.
 *
 * @param name one word, or two where the first is shared, as {@code reckon duct}
 * @param says what it does, in half a line
 * @param operands each stands once, in this order
 * @param options in the order of the help
 * @param text paragraphs of the help
 * @param examples what to type, without the {@code spile} before it, each with a word on what it is for
 */
record Usage(
        String name,
        String says,
        List<Operand> operands,
        List<CommandOption> options,
        List<String> text,
        List<Example> examples) {
    static final CommandOption HELP = new CommandOption("h", "help", "", Stands.ONCE_OR_NOT, "Prints this help.");

    Usage {
        operands = List.copyOf(operands);
        var withHelp = new ArrayList<>(options);
        withHelp.add(HELP);
        options = List.copyOf(withHelp);
        text = List.copyOf(text);
        examples = List.copyOf(examples);
    }

    /** A word without dashes: {@code HOUSE}, "the house file". */
    record Operand(String label, String says) {}

    /** A line to type, and what it does. */
    record Example(String line, String says) {}

    /** The words of its name. */
    List<String> nameWords() {
        return List.of(name.split(" ", -1));
    }

    /** {@code draw HOUSE -o DIR [OPTION ...]}. */
    String synopsis() {
        var line = new StringBuilder(name);
        operands.forEach(operand -> line.append(' ').append(operand.label()));
        options.stream()
                .filter(option -> option.stands() == Stands.ONCE)
                .forEach(option -> line.append(' ').append(option.shortest()));
        return line.append(" [OPTION ...]").toString();
    }
}
