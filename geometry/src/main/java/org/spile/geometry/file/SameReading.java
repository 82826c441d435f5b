package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Position;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Sign;

/** Follows {@code as PATH} to the reading that it is. */
record SameReading(Scribe scribe) {
    private static final String AS = "as ";

    /** Whether words point to a reading elsewhere. */
    static boolean meant(String words) {
        return words.startsWith(AS);
    }

    /** The reading pointed to, under its own path. */
    Optional<Reading> read(Spot spot, Ask ask) {
        var way = new ArrayList<String>(List.of(spot.path()));
        Spot at = spot;
        while (meant(at.text())) {
            Optional<Spot> next = target(at, spot);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
            if (way.contains(at.path())) {
                way.add(at.path());
                scribe.wrong(
                        spot,
                        "this goes in a circle: " + String.join(" -> ", way) + ".",
                        "One of them needs a number.");
                return Optional.empty();
            }
            way.add(at.path());
        }
        return value(spot, at, ask);
    }

    private Optional<Reading> value(Spot spot, Spot at, Ask ask) {
        Parse<Reading> parse = ask.kind() == Kind.LENGTH
                ? scribe.quantities().position(at.text(), Sign.ANY).map(Position::first)
                : scribe.quantities().reading(at.text(), ask);
        boolean pair = ask.kind() == Kind.LENGTH && at.text().contains("..");
        if (parse.value().isEmpty() || pair) {
            scribe.wrong(
                    spot,
                    at.path() + " is " + at.found() + ", not " + ask.kind().phrase() + ".",
                    "Point to one value of the same kind.");
            return Optional.empty();
        }
        Reading reading = parse.value().get().withPath(at.path());
        return Optional.of(Layers.materialOf(at, scribe)
                .map(material -> material.reckoned(reading))
                .orElse(reading));
    }

    /** Where {@code as PATH} leads to: a text, or a map whose {@code at} is a text. */
    private Optional<Spot> target(Spot at, Spot from) {
        String path = path(at.text());
        Steps.Walk walk = Steps.walk(scribe.root(), path);
        Optional<Spot> found = walk.end().flatMap(end -> end.isMap() ? end.child("at") : Optional.of(end));
        if (found.isEmpty() || !found.get().isText()) {
            String nearest = NearestName.of(walk.missing(), walk.present())
                    .map(name -> "Nearest: \"" + walk.with(name) + "\".")
                    .orElse("Point to a value that is typed in this file.");
            scribe.wrong(
                    from,
                    walk.end().isEmpty() ? "there is no \"" + path + "\"." : "\"" + path + "\" isn't one value.",
                    nearest);
            return Optional.empty();
        }
        return found;
    }

    /** The path behind {@code as}, without what may follow it. */
    static String path(String words) {
        String path = words.substring(AS.length()).strip();
        return path.endsWith(" out")
                ? path.substring(0, path.length() - " out".length()).strip()
                : path;
    }
}
