package org.spile.exporters.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.whole.Checks;
import org.spile.analysis.whole.TapeSheet;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.sheets.Subject;
import org.spile.exporters.sheets.TapeSheets;
import org.spile.exporters.table.Ink;
import org.spile.exporters.table.TapeJson;
import org.spile.exporters.table.TapeReport;
import org.spile.exporters.table.TapeText;

/** {@code measure}: which dimensions decide the tightest findings, in walking order, with blanks. */
final class MeasureCommand implements Command {
    private static final CommandOption JSON =
            CommandOption.flag("json", "Prints one JSON object instead; docs/reference/command.md tells its members.");

    @Override
    public Usage usage() {
        var options = new ArrayList<CommandOption>();
        options.add(Asked.ONLY);
        options.addAll(HouseInput.OPTIONS);
        options.addAll(Output.OPTIONS);
        options.add(JSON);
        return new Usage(
                "measure",
                "what to measure to settle the tightest findings",
                List.of(HouseInput.HOUSE),
                options,
                List.of(
                        "A finding could turn if its dimensions together may be off by more than its margin. Those that don't"
                                + " pass come first, then those nearest to turning; of each, the dimensions that must be"
                                + " measured to settle it. What is assumed, or says no tolerance, counts as doubtful first: it"
                                + " is presumed to be off by 5 mm in the shell, 2 mm on a thing, 1 mm on a layer (common"
                                + " practice, no source), for this choice only.",
                        "Rows stand in walking order: trailer by trailer, rear to front, floor to ceiling. Measured values go into"
                                + " the house file, as 1958 ± 1 measured, or behind --set to try them."),
                List.of(
                        new Usage.Example("measure house.yaml", "The sheet as text."),
                        new Usage.Example("measure house.yaml -o tape", "And as a page to print, into tape/."),
                        new Usage.Example("measure house.yaml --only fit.clearance", "What decides clearances only.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        var asked = Asked.in(words);
        if (asked instanceof Asked.Unheard unheard) {
            return console.refuse(unheard.why());
        }
        var output = Output.in(words);
        if (output instanceof Output.Bad bad) {
            return console.refuse(bad.why());
        }
        var opened = HouseInput.open(words);
        if (!(opened instanceof Opened.Sound sound)) {
            return HouseInput.complain(opened, console);
        }
        var findings = standing(sound, (Asked.Named) asked);
        var sheet = TapeSheet.of(sound.house(), findings.all(), TapeSheet.ROOM);
        if (output instanceof Output.Into into && !sheet.rows().isEmpty()) {
            var refused = draw(sound, findings, sheet, into, console);
            if (refused.isPresent()) {
                return console.refuse(refused.get());
            }
        }
        try {
            print(report(sound, sheet), words, console);
        } catch (IOException e) {
            // A print writer keeps its troubles to itself; the process asks for them at its end.
            throw new UncheckedIOException(e);
        }
        return findings.anyFails() ? ExitStatus.SOMETHING_FAILS : ExitStatus.NOTHING_FAILS;
    }

    private static TapeReport report(Opened.Sound sound, TapeSheet sheet) {
        return new TapeReport(
                BuildVersion.number(), sound.file(), sound.house().told().title(), sound.options(), sheet);
    }

    private static Optional<Refusal> draw(
            Opened.Sound sound, Findings findings, TapeSheet sheet, Output.Into into, Console console) {
        var name = SheetFiles.plainName(sound.file());
        var laid = TapeSheets.of(Subject.of(name, sound.house(), findings.worstFirst()), sheet);
        if (laid instanceof Laid.TooLarge large) {
            return Optional.of(new Refusal(large.because(), "choose fewer checks with --only"));
        }
        var set = SheetSet.numbered(name + "-measure", List.of(((Laid.Fits) laid).sheet()));
        return into.put(SheetFiles.of(set), console);
    }

    private static Findings standing(Opened.Sound sound, Asked.Named asked) {
        return Checks.standing(sound.house(), asked.names().isEmpty() ? Checks.names() : asked.names());
    }

    private static void print(TapeReport report, Words words, Console console) throws IOException {
        if (words.has(JSON.name())) {
            TapeJson.write(report, console.out());
        } else {
            TapeText.in(console.colour() ? Ink.COLOUR : Ink.PLAIN).write(report, console.out());
        }
    }
}
