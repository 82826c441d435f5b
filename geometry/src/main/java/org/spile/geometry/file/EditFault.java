package org.spile.geometry.file;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * Why an edit can't be made where its path leads.
 *
 * @param says what is wrong
 * @param advice what to write instead
 */
record EditFault(String says, String advice) {
    /** Sections whose things must be given whole before single values of theirs can be changed. */
    private static final Set<String> THINGS = Set.of(
            "trailers", "rooms", "cavities", "fixtures", "movers", "units", "terminals", "runs", "lines", "masses");

    private static final Set<String> SURFACE_KEYS = Set.of("drop", "linings", "layers");

    static Optional<EditFault> of(EditWalk walk, NewValue value) {
        boolean single = value instanceof NewValue.Single;
        if (walk.whole()) {
            String says = walk.here() + " holds " + holds(walk.node()) + ".";
            return single && !(walk.node() instanceof TextNode)
                    ? fault(says, "Name one of them; or give all of it in braces.")
                    : Optional.empty();
        }
        if (walk.node() instanceof MapNode map) {
            return walk.next().isKey()
                    ? unknownThing(walk, map)
                    : fault(walk.here() + " is no list.", "Name a key: " + holds(map) + ".");
        }
        if (walk.node() instanceof ListNode list) {
            int items = list.items().size();
            return !walk.next().isKey() && walk.next().item() == items + 1
                    ? Optional.empty()
                    : fault(walk.here() + " is a list of " + items + ".", "Name an item: " + walk.here() + "[1].");
        }
        return below(walk, (TextNode) walk.node(), single);
    }

    private static Optional<EditFault> below(EditWalk walk, TextNode text, boolean single) {
        boolean one =
                !walk.next().isKey() && walk.next().item() <= 2 && walk.rest().isEmpty() && single;
        boolean surface =
                walk.next().isKey() && SURFACE_KEYS.contains(walk.next().key());
        return text.missing() || surface || (one && PairText.of(text.text()).isPresent())
                ? Optional.empty()
                : fault(
                        walk.here() + " is one value, \"" + text.text() + "\".",
                        "There is nothing below it to change.");
    }

    private static Optional<EditFault> unknownThing(EditWalk walk, MapNode map) {
        String section = walk.path().steps().get(0).key();
        boolean thing = walk.done() == 1 && !walk.rest().isEmpty();
        boolean first = walk.done() == 0 && walk.rest().size() > 1;
        if (!THINGS.contains(section) || !(thing || first)) {
            return Optional.empty();
        }
        String id = walk.path().steps().get(1).toString();
        String nearest = thing
                ? NearestName.of(id, map.names())
                        .map(name -> "Nearest: \"" + name + "\". ")
                        .orElse("")
                : "";
        return fault(
                "there is no \"" + id + "\" in " + section + ".",
                nearest + "To add it, give it whole: " + section + "." + id + "={...}.");
    }

    private static Optional<EditFault> fault(String says, String advice) {
        return Optional.of(new EditFault(says, advice));
    }

    private static String holds(Node node) {
        if (node instanceof MapNode map) {
            return map.names().isEmpty() ? "nothing yet" : String.join(", ", map.names());
        }
        int items = node instanceof ListNode list ? list.items().size() : 0;
        String first = IntStream.rangeClosed(1, Math.min(items, 3))
                .mapToObj(i -> "[" + i + "]")
                .collect(Collectors.joining(", "));
        return items == 0 ? "nothing yet" : first + (items > 3 ? " ..." : "");
    }
}
