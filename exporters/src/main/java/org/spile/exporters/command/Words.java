package org.spile.exporters.command;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.cli.CommandLine;

/** The words behind a command, sorted into operands and options. */
final class Words {
    private final CommandLine line;

    Words(CommandLine line) {
        this.line = line;
    }

    String operand(int index) {
        return line.getArgList().get(index);
    }

    boolean has(String option) {
        return line.hasOption(option);
    }

    /** The value of an option that has to stand. */
    String value(String option) {
        return line.getOptionValue(option);
    }

    /** Every value of a repeatable option, in the order written. */
    List<String> values(String option) {
        var values = line.getOptionValues(option);
        return values == null ? List.of() : List.copyOf(Arrays.asList(values));
    }
}
