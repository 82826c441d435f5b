package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import org.spile.geometry.kernel.measure.NearestName;

/** Keys that a map may not have: told with the nearest right one or a hint where one is known. */
record UnknownKeys(BinaryOperator<String> hints, List<String> known) {

    void check(Spot spot, Scribe scribe) {
        for (Spot.Entry entry : spot.entries()) {
            if (!known.contains(entry.key())) {
                scribe.wrongKey(spot, entry, " has no \"" + entry.key() + "\".", advice(entry));
            }
        }
    }

    private String advice(Spot.Entry entry) {
        String hint = hints.apply(entry.key(), entry.value().text());
        if (!hint.isEmpty()) {
            return hint;
        }
        if (Names.SWITCH_WORDS.contains(entry.key())) {
            return "on, off, yes and no are never keys: other YAML readers turn them into true and false.";
        }
        Optional<String> nearest = NearestName.of(entry.key(), known);
        return nearest.map(name -> "Nearest: \"" + name + "\".")
                .orElse("Its keys are " + String.join(", ", known) + ".");
    }
}
