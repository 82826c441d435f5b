package org.spile.exporters.command;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.whole.Checks;
import org.spile.geometry.house.House;
import org.spile.geometry.kernel.measure.NearestName;

/** The questions a command line asks. */
sealed interface Asked {
    CommandOption ONLY = CommandOption.repeated("only", "CHECK", "Asks this check only, as fit or fit.clearance.");

    /** Checks that exist; all of them if none is named. */
    record Named(List<String> names) implements Asked {
        Findings answer(House house) {
            return names.isEmpty() ? Checks.answer(house) : Checks.answer(house, names);
        }
    }

    /** A check that doesn't exist. */
    record Unheard(Refusal why) implements Asked {}

    static Asked in(Words words) {
        var wanted = words.values(ONLY.name());
        for (var name : wanted) {
            if (Checks.names().stream().noneMatch(check -> Findings.isOf(name, check))) {
                return new Unheard(new Refusal("there is no check \"" + name + "\"", meant(name)));
            }
        }
        return new Named(wanted);
    }

    private static String meant(String name) {
        var known = known();
        return NearestName.of(name, known)
                .map(near -> "did you mean " + near + "?")
                .orElseGet(() -> "there are " + String.join(", ", known));
    }

    /** Every check and question that can be asked. */
    static SortedSet<String> known() {
        var known = new TreeSet<String>();
        for (var check : Checks.names()) {
            known.add(check);
            known.add(check.substring(0, Math.max(check.indexOf('.'), 0)));
        }
        known.remove("");
        return known;
    }
}
