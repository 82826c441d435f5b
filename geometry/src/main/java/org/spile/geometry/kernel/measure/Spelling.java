package org.spile.geometry.kernel.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to write a unit.
 *
 * @param unit the unit
 * @param text how it is written
 */
record Spelling(Unit unit, String text) {
    private static final List<Spelling> ALL = all();

    /** The unit of a kind that is spelt so; another case is accepted, for no two units of a kind differ by case alone. */
    static Optional<Unit> of(String text, Kind kind) {
        for (Spelling spelling : ALL) {
            if (spelling.unit.kind() == kind && spelling.text.equalsIgnoreCase(text)) {
                return Optional.of(spelling.unit);
            }
        }
        return Optional.empty();
    }

    /** The unit of any kind that is spelt so; the very spelling goes before one in another case. */
    static Optional<Unit> of(String text) {
        Optional<Unit> loose = Optional.empty();
        for (Spelling spelling : ALL) {
            if (!text.isEmpty() && spelling.text.equals(text)) {
                return Optional.of(spelling.unit);
            }
            if (!text.isEmpty() && loose.isEmpty() && spelling.text.equalsIgnoreCase(text)) {
                loose = Optional.of(spelling.unit);
            }
        }
        return loose;
    }

    /** All spellings, in the order of their units. */
    static List<Spelling> table() {
        return ALL;
    }

    private static List<Spelling> all() {
        var all = new ArrayList<Spelling>();
        for (Unit unit : Unit.values()) {
            for (String text : unit.spellings()) {
                all.add(new Spelling(unit, text));
            }
        }
        return List.copyOf(all);
    }
}
