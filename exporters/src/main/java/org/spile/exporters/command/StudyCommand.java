package org.spile.exporters.command;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.whole.Checks;
import org.spile.analysis.whole.Shown;
import org.spile.analysis.whole.Study;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.sheets.StudySheets;
import org.spile.exporters.sheets.Subject;
import org.spile.exporters.table.Ink;
import org.spile.exporters.table.StudyCsv;
import org.spile.exporters.table.StudyReport;
import org.spile.exporters.table.StudyText;
import org.spile.geometry.kernel.measure.NearestName;

/** {@code study}: one or two values swept over the whole house, as table, CSV and plot. */
final class StudyCommand implements Command {
    private static final CommandOption SHOW = CommandOption.repeated(
            "show", "CHECK", "What to look at, as fit, fit.clearance or fit.maker/units.cooler.");
    private static final int WORTH_TELLING = 20;

    @Override
    public Usage usage() {
        var options = new ArrayList<CommandOption>();
        options.add(VaryWords.VARY);
        options.add(SHOW);
        options.addAll(HouseInput.OPTIONS);
        options.addAll(Output.OPTIONS);
        return new Usage(
                "study",
                "one or two values swept over the whole house",
                List.of(HouseInput.HOUSE),
                options,
                List.of(
                        "Every point is the whole house, worked out and asked again. A point fits if nothing shown fails or is"
                                + " open. What a duct is worth bars nothing: the round that loses as much per metre is told and"
                                + " weighed. Without --show it is fit and duct.",
                        "Points to choose among are starred: no other that fits is better in one thing and as good in all"
                                + " others (Pareto's front). Weighed are the swept values - the least of a drop, the most of a"
                                + " lining or wrap; write least or most behind a range to say it for another -, whether it holds"
                                + " with every tolerance too, and the rounds.",
                        "Without a step a range is taken in ten. A study has " + Study.MOST_POINTS
                                + " points at most. Values that belong together are swept together, as A+B=FROM..TO."),
                List.of(
                        new Usage.Example(
                                "study house.yaml --vary 'cavities.loft.ceiling.drop=0..20 by 2'",
                                "What fits as the ceiling comes down?"),
                        new Usage.Example(
                                "study house.yaml --vary cavities.loft.high=255..265 -o study",
                                "In ten steps; table, CSV and plot, the files into study/.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        var output = Output.in(words);
        if (output instanceof Output.Bad bad) {
            return console.refuse(bad.why());
        }
        var opened = HouseInput.open(words);
        if (!(opened instanceof Opened.Sound sound)) {
            return HouseInput.complain(opened, console);
        }
        var vary = VaryWords.in(sound, words);
        if (!vary.refused().isEmpty()) {
            vary.problems().forEach(problem -> console.say(problem.toString()));
            vary.refused().forEach(why -> console.complain(why.error(), why.hint()));
            return ExitStatus.UNUSABLE_INPUT;
        }
        var shown = shown(words);
        var unheard = unheard(shown, sound);
        if (unheard.isPresent()) {
            return console.refuse(unheard.get());
        }
        var study = Study.of(vary::variant, vary.variations(), shown, progress(console));
        var report = new StudyReport(
                BuildVersion.number(), sound.file(), sound.house().told().title(), sound.options(), study);
        if (output instanceof Output.Into into) {
            var refused = write(sound, report, into, console);
            if (refused.isPresent()) {
                return console.refuse(refused.get());
            }
        }
        try {
            StudyText.in(console.colour() ? Ink.COLOUR : Ink.PLAIN).write(report, console.out());
        } catch (IOException e) {
            // A print writer keeps its troubles to itself; the process asks for them at its end.
            throw new UncheckedIOException(e);
        }
        return study.front().isEmpty() ? ExitStatus.SOMETHING_FAILS : ExitStatus.NOTHING_FAILS;
    }

    private static List<Shown> shown(Words words) {
        var asked = words.values(SHOW.name());
        return (asked.isEmpty() ? List.of("fit", "duct") : asked)
                .stream().distinct().map(Shown::of).toList();
    }

    /** A check that isn't there, or a thing that it says nothing of. */
    private static Optional<Refusal> unheard(List<Shown> shown, Opened.Sound sound) {
        for (var each : shown) {
            if (Checks.names().stream().noneMatch(name -> Findings.isOf(each.check(), name))) {
                return Optional.of(
                        new Refusal("there is no check \"" + each.check() + "\"", meant(each.check(), Asked.known())));
            }
            if (!each.about().isEmpty()) {
                var ids = new TreeSet<String>();
                var findings =
                        Checks.standing(sound.house(), List.of(each.check())).all();
                findings.forEach(finding -> ids.add(finding.subject()));
                if (findings.stream().noneMatch(each::takes)) {
                    return Optional.of(new Refusal(
                            each.check() + " says nothing of \"" + each.about() + "\"", meant(each.about(), ids)));
                }
            }
        }
        return Optional.empty();
    }

    private static String meant(String word, SortedSet<String> known) {
        return NearestName.of(word, known)
                .map(near -> "did you mean " + near + "?")
                .orElseGet(() -> "there are " + String.join(", ", known));
    }

    /** Told on a screen only. */
    private static IntConsumer progress(Console console) {
        return done -> {
            if (console.colour() && done % WORTH_TELLING == 0) {
                console.err().print("\r" + done + " points\u001b[K\r");
                console.err().flush();
            }
        };
    }

    private static Optional<Refusal> write(Opened.Sound sound, StudyReport report, Output.Into into, Console console) {
        var files = new LinkedHashMap<String, FileContent>();
        files.put("study.csv", out -> {
            var csv = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            StudyCsv.write(report, csv);
            csv.flush();
        });
        var name = SheetFiles.plainName(sound.file());
        var laid = StudySheets.of(Subject.of(name, sound.house(), List.of()), report.study());
        if (laid instanceof Laid.Fits fits) {
            files.putAll(SheetFiles.of(SheetSet.numbered(name + "-study", List.of(fits.sheet()))));
        } else {
            console.err().print("left out: " + ((Laid.TooLarge) laid).because() + "\n");
        }
        return into.put(files, console);
    }
}
