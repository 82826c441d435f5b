package org.spile.geometry.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.kernel.measure.NearestName;

/** The names that things of one file bear, and what each thing is. */
final class Names {
    /** Words that some YAML readers turn into true, false or nothing. */
    static final Set<String> SWITCH_WORDS = Set.of("on", "off", "yes", "no", "true", "false", "null");

    /** Words that mean something where an id could stand. */
    static final Set<String> TAKEN =
            Set.of("outside", "rest", "top", "road", "tilt", "stance", "climate", "wind", "wind-from");

    private final Map<String, Named> byName = new LinkedHashMap<>();

    /**
     * A named thing.
     *
     * @param section where it stands: {@code units}, {@code rooms}, {@code openings}, {@code spigots}, {@code ports} ...
     * @param spot the thing
     */
    record Named(String section, Spot spot) {
        /** What it is, with its article. */
        String noun() {
            return switch (section) {
                case "cavities" -> "a cavity";
                case "masses" -> "a mass";
                case "openings" -> "an opening";
                default -> "a " + section.substring(0, section.length() - 1);
            };
        }
    }

    /** Gathers the names of a file, telling of bad and doubled ones. */
    static Names of(Spot root) {
        var names = new Names();
        for (String section : Sections.THINGS) {
            root.child(section).ifPresent(things -> names.gather(section, things));
        }
        return names;
    }

    private void gather(String section, Spot things) {
        for (Spot.Entry entry : things.entries()) {
            byName.putIfAbsent(entry.key(), new Named(section, entry.value()));
            inside(entry, "openings", "");
            inside(entry, "spigots", entry.key() + ".");
            inside(entry, "ports", entry.key() + ".");
        }
    }

    private void inside(Spot.Entry thing, String section, String before) {
        thing.value()
                .child(section)
                .ifPresent(inner -> inner.entries()
                        .forEach(entry -> byName.putIfAbsent(before + entry.key(), new Named(section, entry.value()))));
    }

    /** The thing of that name, if there is one. */
    Optional<Named> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The names of all things of some sections. */
    List<String> of(Set<String> sections) {
        return byName.entrySet().stream()
                .filter(each -> sections.contains(each.getValue().section()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The nearest name among some sections' things, as {@code Nearest: "lobby-top" (a cavity).}; empty if none is near. */
    String nearest(String wrong, Set<String> sections) {
        return NearestName.of(wrong, of(sections))
                .map(name -> "Nearest: \"" + name + "\" (" + byName.get(name).noun() + ").")
                .orElse("");
    }
}
