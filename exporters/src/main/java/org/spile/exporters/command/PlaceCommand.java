package org.spile.exporters.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.place.Place;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.sheets.PlaceSheets;
import org.spile.exporters.sheets.Subject;
import org.spile.exporters.table.Ink;
import org.spile.exporters.table.PlaceJson;
import org.spile.exporters.table.PlaceText;
import org.spile.geometry.kernel.measure.NearestName;

/** {@code place}: every place where a unit fits. */
final class PlaceCommand implements Command {
    private static final Usage.Operand UNIT = new Usage.Operand("UNIT", "the unit's name in the file");
    private static final CommandOption YAW = CommandOption.repeated(
            "yaw", "DEG", "Turns the unit so far from its trailer's forward to the left, not to all four quarters.");

    private static final CommandOption JSON =
            CommandOption.flag("json", "Prints one JSON object instead, with every corner of the map.");

    @Override
    public Usage usage() {
        var options = new ArrayList<CommandOption>();
        options.add(YAW);
        options.addAll(HouseInput.OPTIONS);
        options.addAll(Output.OPTIONS);
        options.add(JSON);
        return new Usage(
                "place",
                "every place where a unit fits, and what would open one",
                List.of(HouseInput.HOUSE, UNIT),
                options,
                List.of(
                        "The map is exact: at a place of it nothing of fit fails because of the unit as drawn, in any stance,"
                                + " and beside it something does. The unit's height follows what it is measured from. What"
                                + " joins the unit, hangs from it or starts at it would have to be made anew: it is left out"
                                + " and named.",
                        "Where there is no place, each limit is told with the area it alone would leave and with how much it"
                                + " would have to ask less; then what a lower ceiling or a thinner insulation would open."
                                + " The words behind --set can be typed after this command or check to try one."),
                List.of(
                        new Usage.Example("place house.yaml cooler", "At all four quarter turns."),
                        new Usage.Example("place house.yaml cooler -o places", "And as a map, into places/."),
                        new Usage.Example(
                                "place house.yaml cooler --yaw 0 --yaw 30",
                                "As it blows forward, and turned by 30 deg.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        var yaws = Yaws.in(words.values(YAW.name()));
        if (yaws instanceof Yaws.Wrong wrong) {
            return console.refuse(wrong.why());
        }
        var output = Output.in(words);
        if (output instanceof Output.Bad bad) {
            return console.refuse(bad.why());
        }
        var opened = HouseInput.open(words);
        if (!(opened instanceof Opened.Sound sound)) {
            return HouseInput.complain(opened, console);
        }
        var unit = words.operand(1);
        var units = sound.house().told().units();
        if (!units.containsKey(unit)) {
            return console.refuse(new Refusal(
                    "this house has no unit \"" + unit + "\"",
                    NearestName.of(unit, units.keySet())
                            .map(near -> "did you mean " + near + "?")
                            .orElse(units.isEmpty() ? "it has none" : "it has " + String.join(", ", units.keySet()))));
        }
        var answer = Place.of(sound.house(), unit, ((Yaws.Named) yaws).degrees());
        if (answer.isEmpty()) {
            var joins = units.get(unit).joins();
            return console.refuse(new Refusal(
                    unit + " has no place of its own: it " + (joins.isEmpty() ? "sits in a duct" : "joins " + joins),
                    joins.isEmpty() ? "move the duct" : "ask for the places of " + joins.split("\\.", 2)[0]));
        }
        if (output instanceof Output.Into into && !answer.get().maps().isEmpty()) {
            var refused = draw(sound, answer.get(), into, console);
            if (refused.isPresent()) {
                return console.refuse(refused.get());
            }
        }
        try {
            print(sound, answer.get(), words, console);
        } catch (IOException e) {
            // A print writer keeps its troubles to itself; the process asks for them at its end.
            throw new UncheckedIOException(e);
        }
        return answer.get().fits() ? ExitStatus.NOTHING_FAILS : ExitStatus.SOMETHING_FAILS;
    }

    private static Optional<Refusal> draw(Opened.Sound sound, PlaceAnswer answer, Output.Into into, Console console) {
        var name = SheetFiles.plainName(sound.file());
        var laid = PlaceSheets.of(Subject.of(name, sound.house(), List.of()), answer);
        if (laid instanceof Laid.TooLarge large) {
            return Optional.of(new Refusal(large.because(), "look at fewer turns with --yaw"));
        }
        var set = SheetSet.numbered(name + "-place", List.of(((Laid.Fits) laid).sheet()));
        return into.put(SheetFiles.of(set), console);
    }

    private static void print(Opened.Sound sound, PlaceAnswer answer, Words words, Console console) throws IOException {
        if (words.has(JSON.name())) {
            PlaceJson.write(BuildVersion.number(), sound.file(), answer, console.out());
            return;
        }
        PlaceText.in(console.colour() ? Ink.COLOUR : Ink.PLAIN).write(answer, console.out());
    }
}
