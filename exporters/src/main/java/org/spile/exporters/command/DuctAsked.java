package org.spile.exporters.command;

import java.util.List;
import java.util.Optional;
import org.spile.analysis.duct.Air;
import org.spile.analysis.duct.DuctFace;
import org.spile.analysis.duct.SectionShape;
import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;

/**
 * What {@code reckon duct} was asked.
 *
 * @param section the duct; empty where its width is the question
 * @param shape in which the width is asked
 * @param depthMm depth at which the width is asked; empty for a round duct
 * @param flowM3s through it, if said
 * @param lengthMm how long it is, if said
 * @param insteadMm the pipe it stands in for, if said
 * @param smallMm the small rounds asked about, if said
 * @param roughMm of its face
 * @param face what was named; empty where the roughness was typed
 * @param air in it
 * @param weather how the air was told
 * @param inInches whether lengths are answered in inches
 */
record DuctAsked(
        Optional<Section> section,
        SectionShape shape,
        Optional<Double> depthMm,
        Optional<Double> flowM3s,
        Optional<Double> lengthMm,
        Optional<Double> insteadMm,
        Optional<Double> smallMm,
        double roughMm,
        Optional<DuctFace> face,
        Air air,
        Weather weather,
        boolean inInches) {

    /** Temperature (K), relative humidity (0..1) and height above the sea (m). */
    record Weather(double tempK, double humidity, double altitudeM) {}

    /** What came of reading the words. */
    sealed interface Read {
        /** They are in order. */
        record Sound(DuctAsked asked) implements Read {}

        /** They aren't; all that is wrong. */
        record Wrong(List<Refusal> why) implements Read {
            public Wrong {
                why = List.copyOf(why);
            }
        }
    }

    static Read in(Words typed) {
        var words = new DuctWords(typed);
        var wide = words.lengthMm(DuctWords.WIDE);
        var high = words.lengthMm(DuctWords.HIGH);
        var round = words.lengthMm(DuctWords.ROUND);
        checkSizes(words);
        var rough = words.lengthMm(DuctWords.ROUGH);
        var face = words.face();
        if (words.has(DuctWords.ROUGH) && words.has(DuctWords.FACE)) {
            words.refuse("--rough and --face both say how rough it is", "leave one of them out");
        }
        var flow = words.flowM3s();
        var length = words.lengthMm(DuctWords.LONG);
        var instead = words.lengthMm(DuctWords.INSTEAD);
        var small = words.lengthMm(DuctWords.SMALL);
        var weather = new Weather(words.tempK(), words.humidity(), words.altitudeM());
        var air = Air.at(weather.tempK(), weather.humidity(), weather.altitudeM());
        if (words.wrong().isEmpty()) {
            air.because().ifPresent(why -> words.refuse(why, "write another temperature or altitude"));
        }
        if (!words.wrong().isEmpty()) {
            return new Read.Wrong(words.wrong());
        }
        var shape = words.oval() ? SectionShape.FLAT_OVAL : SectionShape.RECTANGULAR;
        Optional<Section> section =
                round.<Section>map(Section.Round::new).or(() -> wide.flatMap(w -> high.map(h -> shape.of(w, h))));
        return new Read.Sound(new DuctAsked(
                section,
                shape,
                high,
                flow,
                length,
                instead,
                small,
                rough.orElse(face.roughMm()),
                rough.isPresent() ? Optional.empty() : Optional.of(face),
                ((Reckoning.Known<Air>) air).value(),
                weather,
                words.inInches()));
    }

    /** Round alone, or wide and high, or high and the pipe. */
    private static void checkSizes(DuctWords words) {
        boolean wide = words.has(DuctWords.WIDE);
        boolean high = words.has(DuctWords.HIGH);
        if (words.has(DuctWords.ROUND)) {
            if (wide || high || words.oval()) {
                words.refuse("a round duct has neither --wide nor --high nor --oval", "leave them out, or --round");
            }
            return;
        }
        if (wide && !high) {
            words.refuse("reckon duct needs --high beside --wide", "write both, as --wide 204 --high 60");
        } else if (!high) {
            words.refuse(
                    "reckon duct needs a section", "write --wide 204 --high 60, or --round 100; --help shows more");
        } else if (!wide && !words.has(DuctWords.INSTEAD)) {
            words.refuse(
                    "reckon duct needs --wide, or the pipe that a duct so high stands in for",
                    "write --wide 204, or --instead-of 100");
        }
    }
}
