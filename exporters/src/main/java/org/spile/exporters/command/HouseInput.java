package org.spile.exporters.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.spile.analysis.whole.SomeStances;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;
import org.spile.geometry.kernel.measure.NearestName;

/** The house that a command line asks for: its file, the options and settings applied to it, the stances looked at. */
final class HouseInput {
    static final Usage.Operand HOUSE = new Usage.Operand("HOUSE", "the house file");

    private static final CommandOption OPTION =
            CommandOption.repeated("option", "NAME", "Applies an option that the file names.");
    private static final CommandOption SET =
            CommandOption.repeated("set", "PATH=VALUE", "Changes one value of the file for this run.");
    private static final CommandOption STANCE =
            CommandOption.repeated("stance", "NAME", "Looks at this stance only, not at all of them.");

    static final List<CommandOption> OPTIONS = List.of(OPTION, SET, STANCE);

    private HouseInput() {}

    static Opened open(Words words) {
        var name = words.operand(0);
        final Path file;
        try {
            file = Path.of(name);
        } catch (InvalidPathException e) {
            return refused("not a file's name: " + e.getMessage(), "write another name");
        }
        var options = words.values(OPTION.name());
        var read = HouseFile.house(file, options, words.values(SET.name()));
        if (read instanceof HouseResult.Wrong wrong) {
            return new Opened.Wrong(wrong.problems());
        }
        return inStances(((HouseResult.Sound) read).house(), words.values(STANCE.name()), name, options);
    }

    /** Says why the house couldn't be opened: each problem in its line, and one line of hint. */
    static ExitStatus complain(Opened opened, Console console) {
        if (opened instanceof Opened.Refused refused) {
            return console.refuse(refused.why());
        }
        var problems = ((Opened.Wrong) opened).problems();
        problems.forEach(problem -> console.say(problem.toString()));
        console.hint(
                problems.size() == 1
                        ? "nothing was worked out; put this right and try again"
                        : "nothing was worked out; put these " + problems.size() + " problems right and try again");
        return ExitStatus.UNUSABLE_INPUT;
    }

    private static Opened inStances(House house, List<String> stances, String file, List<String> options) {
        for (var stance : stances) {
            if (!house.stances().contains(stance)) {
                return refused(
                        "this house has no stance \"" + stance + "\"",
                        NearestName.of(stance, house.stances())
                                .map(near -> "did you mean " + near + "?")
                                .orElse("it has " + String.join(", ", house.stances())));
            }
        }
        return new Opened.Sound(file, options, stances.isEmpty() ? house : SomeStances.of(house, stances));
    }

    private static Opened refused(String error, String hint) {
        return new Opened.Refused(new Refusal(error, hint));
    }
}
