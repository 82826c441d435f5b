package org.spile.exporters.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.spile.exporters.sheets.Sheets;
import org.spile.exporters.sheets.Subject;

/** {@code draw}: the house's sheets in every format. */
final class DrawCommand implements Command {
    private static final CommandOption OUTPUT = CommandOption.needed(
            "o", "output", "DIR", "The folder to put the sheets in; it is made if it isn't there.");
    private static final CommandOption FORCE =
            CommandOption.flag("force", "Writes also over files that Spile did not write, or that were changed since.");

    @Override
    public Usage usage() {
        var options = new ArrayList<CommandOption>();
        options.add(OUTPUT);
        options.add(Asked.ONLY);
        options.addAll(HouseInput.OPTIONS);
        options.add(FORCE);
        return new Usage(
                "draw",
                "dimensioned sheets of a house, in every format",
                List.of(HouseInput.HOUSE),
                options,
                List.of(
                        "Failing findings are marked on the sheets; --only chooses which are asked for. Either all files are"
                                + " written or none: each is made ready beside its place and moved there at the end. What"
                                + " Spile wrote before is replaced as long as nobody changed it; DIR/.spile-files keeps count."),
                List.of(
                        new Usage.Example("draw house.yaml -o sheets", "Every sheet, in every format, into sheets/."),
                        new Usage.Example(
                                "draw house.yaml -o sheets-lower --option lower-ceiling", "The same for an option.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        final Path folder;
        try {
            folder = Path.of(words.value(OUTPUT.name()));
        } catch (InvalidPathException e) {
            return console.refuse(new Refusal("not a folder's name: " + e.getMessage(), "write another name"));
        }
        var asked = Asked.in(words);
        if (asked instanceof Asked.Unheard unheard) {
            return console.refuse(unheard.why());
        }
        var opened = HouseInput.open(words);
        if (!(opened instanceof Opened.Sound sound)) {
            return HouseInput.complain(opened, console);
        }
        var findings = ((Asked.Named) asked).answer(sound.house());
        var drawn = Sheets.of(Subject.of(SheetFiles.plainName(sound.file()), sound.house(), findings.worstFirst()));
        var placing = OutputFolder.at(folder).put(SheetFiles.of(drawn.set()), words.has(FORCE.name()));
        if (placing instanceof Placing.Refused refused) {
            return console.refuse(refused.why());
        }
        ((Placing.Placed) placing).files().forEach(file -> console.out().print(file + "\n"));
        drawn.refused().forEach(why -> console.err().print("left out: " + why + "\n"));
        console.out().print(findings.summary().says() + "\n");
        return findings.anyFails() ? ExitStatus.SOMETHING_FAILS : ExitStatus.NOTHING_FAILS;
    }
}
