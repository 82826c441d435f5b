package org.spile.exporters.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import org.spile.exporters.command.CommandOption.Stands;
import org.spile.geometry.kernel.measure.NearestName;

/** Sorts the words behind a command as its usage says, or says what is wrong with them and what was probably meant. */
final class WordSorter {
    private final Usage usage;

    WordSorter(Usage usage) {
        this.usage = usage;
    }

    Parsed sort(List<String> given) {
        var beforeOperandsOnly = given.stream().takeWhile(word -> !word.equals("--"));
        if (beforeOperandsOnly.anyMatch(word -> word.equals("--help") || word.equals("-h"))) {
            return new Parsed.HelpWanted();
        }
        try {
            return ordered(parser().parse(options(), given.toArray(String[]::new)));
        } catch (UnrecognizedOptionException e) {
            return wrong(usage.name() + " has no option " + e.getOption(), meant(e.getOption()));
        } catch (MissingArgumentException e) {
            var option = e.getOption();
            return wrong("--" + option.getLongOpt() + " needs " + option.getArgName() + " behind it", helpShows());
        } catch (ParseException e) {
            return wrong(e.getMessage(), helpShows());
        }
    }

    private Parsed ordered(CommandLine line) {
        var operands = line.getArgList();
        var wanted = usage.operands();
        if (operands.size() < wanted.size()) {
            var missing = wanted.get(operands.size());
            return wrong(usage.name() + " needs " + missing.label() + ", " + missing.says(), helpShows());
        }
        if (operands.size() > wanted.size()) {
            return wrong(
                    "\"" + operands.get(wanted.size()) + "\" is one word too many: " + usage.synopsis(),
                    "quote a value that has blanks in it, as in --set 'units.cooler.high=200 mm'");
        }
        for (var option : usage.options()) {
            var values = line.getOptionValues(option.name());
            if (option.stands() != Stands.ANY_TIMES && values != null && values.length > 1) {
                return wrong("--" + option.name() + " stands " + values.length + " times", "write it once");
            }
            if (option.stands() == Stands.ONCE && values == null) {
                return wrong(usage.name() + " needs " + option.shortest(), "write: spile " + usage.synopsis());
            }
        }
        return new Parsed.Sound(new Words(line));
    }

    private static DefaultParser parser() {
        return DefaultParser.builder()
                .setAllowPartialMatching(false)
                .setStripLeadingAndTrailingQuotes(false)
                .build();
    }

    private Options options() {
        var options = new Options();
        for (var option : usage.options()) {
            options.addOption(Option.builder(option.letter().isEmpty() ? null : option.letter())
                    .longOpt(option.name())
                    .hasArg(!option.label().isEmpty())
                    .argName(option.label())
                    .build());
        }
        return options;
    }

    private String meant(String word) {
        var names = new ArrayList<String>();
        for (var option : usage.options()) {
            names.add("--" + option.name());
            if (!option.letter().isEmpty()) {
                names.add("-" + option.letter());
            }
        }
        int end = word.indexOf('=');
        return NearestName.of(end < 0 ? word : word.substring(0, end), names)
                .map(near -> "did you mean " + near + "?")
                .orElseGet(() -> "it takes "
                        + names.stream().filter(name -> name.startsWith("--")).collect(Collectors.joining(", ")));
    }

    private String helpShows() {
        return "`spile " + usage.name() + " --help` shows what can be written";
    }

    private static Parsed wrong(String error, String hint) {
        return new Parsed.Wrong(new Refusal(error, hint));
    }
}
