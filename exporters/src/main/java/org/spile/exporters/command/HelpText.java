package org.spile.exporters.command;

import java.util.List;

/** The long help, printed on {@code --help} only: 80 columns, the same on every machine. */
final class HelpText {
    private static final int WIDTH = 80;
    private static final int COLUMN = 22;

    private HelpText() {}

    static String of(Usage usage) {
        var text = new StringBuilder("spile ")
                .append(usage.name())
                .append(": ")
                .append(usage.says())
                .append("\n\n");
        text.append("  spile ").append(usage.synopsis()).append("\n\n");
        usage.operands().forEach(operand -> entry(text, operand.label(), operand.says()));
        if (!usage.operands().isEmpty()) {
            text.append('\n');
        }
        usage.options().forEach(option -> entry(text, option.typed(), option.says()));
        for (var paragraph : usage.text()) {
            text.append('\n');
            fill(text, "", 0, paragraph);
        }
        if (!usage.examples().isEmpty()) {
            text.append("\nExamples\n");
        }
        for (var example : usage.examples()) {
            text.append("  spile ").append(example.line()).append('\n');
            fill(text, "      ", 6, example.says());
        }
        return text.append(statuses()).toString();
    }

    static String root(List<Command> commands) {
        var text = new StringBuilder();
        fill(text, "", 0, "spile: will it go in, will it work, and how do I build it? Answers from one house file.");
        text.append("\n  spile COMMAND ...\n\n");
        for (var command : commands) {
            entry(text, command.usage().name(), command.usage().says());
        }
        text.append('\n');
        entry(text, "-h, --help", "Prints this help; behind a command, that command's.");
        entry(text, "--version", "Prints the version.");
        text.append('\n');
        fill(
                text,
                "",
                0,
                "\"spile\" stands for \"java -jar exporters/target/spile.jar\". New here? `spile start hut` writes a"
                        + " first house file with comments, `spile check hut/house.yaml` answers it, and `spile draw"
                        + " hut/house.yaml -o hut/sheets` draws it.");
        return text.append(statuses()).toString();
    }

    private static String statuses() {
        var text = new StringBuilder("\nExit status\n");
        for (var status : ExitStatus.values()) {
            entry(text, Integer.toString(status.code()), status.says());
        }
        return text.toString();
    }

    private static void entry(StringBuilder text, String term, String says) {
        var start = "  " + term;
        if (start.length() + 2 > COLUMN) {
            text.append(start).append('\n');
            start = "";
        }
        fill(text, start + " ".repeat(COLUMN - start.length()), COLUMN, says);
    }

    private static void fill(StringBuilder text, String first, int indent, String words) {
        var line = new StringBuilder(first);
        for (var word : words.split(" ", -1)) {
            if (line.length() > indent && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent));
            }
            line.append(line.length() > indent ? " " : "").append(word);
        }
        text.append(line).append('\n');
    }
}
