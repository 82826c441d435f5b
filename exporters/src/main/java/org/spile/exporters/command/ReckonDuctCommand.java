package org.spile.exporters.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.spile.analysis.duct.DuctFace;
import org.spile.exporters.table.Ink;
import org.spile.exporters.table.Sum;
import org.spile.exporters.table.SumJson;
import org.spile.exporters.table.SumText;
import org.spile.geometry.kernel.measure.Written;

/** {@code reckon duct}: what a duct's section is worth, from a few words and without a house file. */
final class ReckonDuctCommand implements Command {
    private static final CommandOption JSON =
            CommandOption.flag("json", "Prints one JSON object instead; every quantity has its number and unit.");

    @Override
    public Usage usage() {
        var options = new ArrayList<>(DuctWords.OPTIONS);
        options.add(JSON);
        return new Usage(
                "reckon duct",
                "what a duct's section is worth: area, friction, equal rounds",
                List.of(),
                options,
                List.of(
                        "A flat duct with the area of a pipe does not carry like the pipe: more of its air rubs along a"
                                + " wall. So two rounds are told: the one of equal area, and the one of equal friction, which"
                                + " loses as much per metre at the same flow. The second is what the duct is worth.",
                        "Friction is Darcy and Weisbach's with Colebrook's factor. In a flat duct the factor is taken at"
                                + " Jones' Reynolds number (method J); bounds are its scatter in tests, and beyond 8:1 also"
                                + " what the plain hydraulic diameter and the handbooks' equal round say. Widths are found"
                                + " with turbulent friction, also where a wide slot might flow quietly.",
                        "Lengths are millimetres unless a unit is written or --lengths says otherwise; all else carries its"
                                + " unit. Quote what has blanks.",
                        "The faces, with their roughness in mm: " + faces() + "."),
                List.of(
                        new Usage.Example(
                                "reckon duct --wide 204 --high 60 --flow \"25 L/s\"", "All about one flat duct."),
                        new Usage.Example(
                                "reckon duct --wide 314 --high 25 --flow \"20 L/s\" --instead-of 100",
                                "The same area as a 100 mm pipe: how much more does it take, and how wide should it be?"),
                        new Usage.Example(
                                "reckon duct --high 40 --instead-of 125 --flow \"90 m3/h\"",
                                "How wide must a duct 40 mm high be to carry like a 125 mm pipe?"),
                        new Usage.Example(
                                "reckon duct --round 150 --flow \"60 L/s\" --small 75 --face pvc",
                                "How many 75 mm pipes do for one of 150 mm?"),
                        new Usage.Example(
                                "reckon duct --wide 8 --high 3 --lengths in --flow \"53 cfm\" --json",
                                "In inches, as JSON.")));
    }

    @Override
    public ExitStatus run(Words words, Console console) {
        var read = DuctAsked.in(words);
        if (read instanceof DuctAsked.Read.Wrong wrong) {
            wrong.why().forEach(why -> console.complain(why.error(), why.hint()));
            return ExitStatus.UNUSABLE_INPUT;
        }
        var sum = DuctSum.of(((DuctAsked.Read.Sound) read).asked());
        try {
            print(sum, words, console);
        } catch (IOException e) {
            // A print writer keeps its troubles to itself; the process asks for them at its end.
            throw new UncheckedIOException(e);
        }
        return ExitStatus.NOTHING_FAILS;
    }

    private static void print(Sum sum, Words words, Console console) throws IOException {
        if (words.has(JSON.name())) {
            SumJson.write(sum, console.out());
        } else {
            SumText.in(console.colour() ? Ink.COLOUR : Ink.PLAIN).write(sum, console.out());
        }
    }

    private static String faces() {
        return Arrays.stream(DuctFace.values())
                .map(face -> face.word() + " " + Written.number(face.roughMm(), 3) + " (" + face.title() + ")")
                .collect(Collectors.joining(", "));
    }
}
