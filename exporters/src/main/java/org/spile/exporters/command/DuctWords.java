package org.spile.exporters.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.duct.Air;
import org.spile.analysis.duct.DuctFace;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.QuantityText;
import org.spile.geometry.kernel.measure.Reading;

/** The words behind {@code reckon duct}, read as quantities; everything that is wrong with them is kept, not only the first. */
final class DuctWords {
    static final CommandOption WIDE = option("wide", "LENGTH", "Clear width of the duct.");
    static final CommandOption HIGH = option("high", "LENGTH", "Clear height of the duct: the depth that is there.");
    static final CommandOption ROUND = option("round", "LENGTH", "Clear diameter, for a round duct.");
    static final CommandOption OVAL = CommandOption.flag("oval", "Flat oval: two half circles and two flats.");
    static final CommandOption FLOW = option("flow", "FLOW", "How much air it carries, as \"25 L/s\".");
    static final CommandOption LONG = option("long", "LENGTH", "How long it is, to have the loss over that length.");
    static final CommandOption INSTEAD =
            option("instead-of", "LENGTH", "The round pipe that it stands in for; without --wide: asks how wide.");
    static final CommandOption SMALL = option("small", "LENGTH", "Asks how many round ducts of this size do the same.");
    static final CommandOption FACE = option("face", "NAME", "What its inner face is made of; spiral if not said.");
    static final CommandOption ROUGH = option("rough", "LENGTH", "Roughness of its inner face, in place of --face.");
    static final CommandOption TEMPERATURE =
            option("temperature", "TEMPERATURE", "Of the air; \"20 degC\" if not said.");
    static final CommandOption HUMIDITY = option("humidity", "SHARE", "Of the air; \"50 %\" if not said.");
    static final CommandOption ALTITUDE = option("altitude", "ALTITUDE", "Above the sea, as \"500 m\"; 0 if not said.");
    static final CommandOption LENGTHS = option("lengths", "UNIT", "Unit of bare lengths and of answers: mm or in.");

    static final List<CommandOption> OPTIONS = List.of(
            WIDE, HIGH, ROUND, OVAL, FLOW, LONG, INSTEAD, SMALL, FACE, ROUGH, TEMPERATURE, HUMIDITY, ALTITUDE, LENGTHS);

    private final Words words;
    private final QuantityText text;
    private final List<Refusal> wrong = new ArrayList<>();

    DuctWords(Words words) {
        this.words = words;
        this.text = inInches() ? QuantityText.inInches() : QuantityText.inMillimetres();
        checkLengths();
    }

    private static CommandOption option(String name, String label, String says) {
        return new CommandOption("", name, label, CommandOption.Stands.ONCE_OR_NOT, says);
    }

    /** Everything that was wrong so far. */
    List<Refusal> wrong() {
        return List.copyOf(wrong);
    }

    boolean inInches() {
        return words.values(LENGTHS.name()).equals(List.of("in"));
    }

    boolean oval() {
        return words.has(OVAL.name());
    }

    boolean has(CommandOption option) {
        return words.has(option.name());
    }

    Optional<Double> lengthMm(CommandOption option) {
        return read(option, Ask.size());
    }

    Optional<Double> flowM3s() {
        return read(FLOW, Ask.of(Kind.FLOW).positive());
    }

    double tempK() {
        return read(TEMPERATURE, Ask.of(Kind.TEMPERATURE)).orElse(Air.USUAL_K);
    }

    double humidity() {
        return read(HUMIDITY, Ask.of(Kind.RATIO)).orElse(Air.USUAL_HUMIDITY);
    }

    double altitudeM() {
        return read(ALTITUDE, Ask.of(Kind.ALTITUDE)).orElse(0.0);
    }

    /** The face that was named, or the usual one. */
    DuctFace face() {
        if (!has(FACE)) {
            return DuctFace.usual();
        }
        var word = words.value(FACE.name());
        var known = List.of(DuctFace.values()).stream().map(DuctFace::word).toList();
        return DuctFace.named(word).orElseGet(() -> {
            refuse(
                    "--face: there is no face \"" + word + "\"",
                    NearestName.of(word, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("there are " + String.join(", ", known)));
            return DuctFace.usual();
        });
    }

    void refuse(String error, String hint) {
        wrong.add(new Refusal(error, hint));
    }

    private void checkLengths() {
        if (has(LENGTHS) && !List.of("mm", "in").contains(words.value(LENGTHS.name()))) {
            refuse("--lengths: no unit of bare lengths: \"" + words.value(LENGTHS.name()) + "\"", "write mm or in");
        }
    }

    private Optional<Double> read(CommandOption option, Ask ask) {
        if (!has(option)) {
            return Optional.empty();
        }
        Parse<Reading> parse = text.reading(words.value(option.name()), ask);
        parse.refusal().ifPresent(why -> refuse("--" + option.name() + ": " + why.says(), why.advice()));
        if (parse.value().filter(DuctWords::more).isPresent()) {
            refuse(
                    "--" + option.name() + ": \"" + words.value(option.name()) + "\" is more than a number and a unit",
                    "a sum takes no tolerance and no origin; ask twice instead, once with each end");
        }
        return parse.value().map(Reading::value);
    }

    private static boolean more(Reading reading) {
        return reading.toleranceTyped() || !reading.origin().word().isEmpty();
    }
}
