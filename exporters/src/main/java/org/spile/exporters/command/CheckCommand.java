package org.spile.exporters.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.whole.Checks;
import org.spile.exporters.table.EchoText;
import org.spile.exporters.table.Ink;
import org.spile.exporters.table.Report;
import org.spile.exporters.table.ReportJson;
import org.spile.exporters.table.ReportText;
import org.spile.geometry.house.told.AsUnderstood;

/** {@code check}: every finding of a house, on the screen or as JSON. */
final class CheckCommand implements Command {
    private static final CommandOption JSON = CommandOption.flag(
            "json", "Prints one JSON object instead; docs/reference/findings.schema.json describes it.");

    private static final CommandOption ECHO =
            CommandOption.flag("echo", "Says first how each thing of the file was understood.");

    @Override
    public Usage usage() {
        var options = new ArrayList<CommandOption>();
        options.add(Asked.ONLY);
        options.addAll(HouseInput.OPTIONS);
        options.add(ECHO);
        options.add(JSON);
        return new Usage(
                "check",
                "all findings of a house, the worst first",
                List.of(HouseInput.HOUSE),
                options,
                List.of(
                        "A finding fails, is tight (holds as drawn, but not with its tolerances stacked), passes, or is"
                                + " not known, and then says what would settle it. What fails is told with its stack-up, layer"
                                + " by layer, and with remedies: the words behind --set can be typed after this command to try"
                                + " one. The last line counts.",
                        "Options and settings apply in the order written, the options first. A PATH is the keys of the file"
                                + " joined by dots, list items counted from 1; a VALUE without tolerance or origin keeps the"
                                + " old ones. Quote what has brackets or blanks: --set"
                                + " 'cavities.loft.top.linings[1].pir=20 mm'. Nothing is written: to keep a change, type it"
                                + " into the house file.",
                        "The checks: " + String.join(", ", Checks.names()) + "."),
                List.of(
                        new Usage.Example("check house.yaml", "Asks everything, in every stance."),
                        new Usage.Example("check house.yaml --only fit", "Asks only what will go in."),
                        new Usage.Example(
                                "check house.yaml --set cavities.loft.ceiling.drop=16.5",
                                "Answers as if the ceiling of loft hung 16.5 mm lower."),
                        new Usage.Example(
                                "check house.yaml --option thin-foam --json", "An option of the file, as JSON.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        if (words.has(ECHO.name()) && words.has(JSON.name())) {
            return console.refuse(new Refusal("--echo is for people, --json for programs", "leave one of them out"));
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
        try {
            print(sound, findings, words, console);
        } catch (IOException e) {
            // A print writer keeps its troubles to itself; the process asks for them at its end.
            throw new UncheckedIOException(e);
        }
        return findings.anyFails() ? ExitStatus.SOMETHING_FAILS : ExitStatus.NOTHING_FAILS;
    }

    private static void print(Opened.Sound sound, Findings findings, Words words, Console console) throws IOException {
        var told = sound.house().told();
        var report = new Report(
                BuildVersion.number(),
                sound.file(),
                told.title(),
                sound.options(),
                sound.house().stances(),
                findings);
        if (words.has(JSON.name())) {
            ReportJson.write(report, console.out());
            return;
        }
        if (words.has(ECHO.name())) {
            EchoText.write(AsUnderstood.of(told), console.out());
        }
        ReportText.in(console.colour() ? Ink.COLOUR : Ink.PLAIN).write(report, console.out());
    }
}
