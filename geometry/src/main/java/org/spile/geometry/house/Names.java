package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.kernel.measure.NearestName;

/** Every id of a house, with what it names and where it stands in the file. */
final class Names {
    private final Map<String, String> phrases = new LinkedHashMap<>();
    private final Map<String, String> paths = new LinkedHashMap<>();
    private final List<String> twice = new ArrayList<>();

    Names(ToldHouse house) {
        add("trailers", "a trailer", house.trailers().keySet());
        add("rooms", "a room", house.rooms().keySet());
        for (Map.Entry<String, ToldRoom> room : house.rooms().entrySet()) {
            add(
                    "rooms." + room.getKey() + ".openings",
                    "an opening",
                    room.getValue().openings().keySet());
        }
        add("cavities", "a cavity", house.cavities().keySet());
        add("fixtures", "a fixture", house.fixtures().keySet());
        add("movers", "a mover", house.movers().keySet());
        add("units", "a unit", house.units().keySet());
        add("terminals", "a terminal", house.terminals().keySet());
        add("runs", "a run", house.runs().keySet());
        add("lines", "a line", house.lines().keySet());
        add("masses", "a mass", house.masses().keySet());
    }

    private void add(String section, String phrase, Set<String> ids) {
        for (String id : ids) {
            String path = section + "." + id;
            if (paths.putIfAbsent(id, path) == null) {
                phrases.put(id, phrase);
            } else {
                twice.add(path);
            }
        }
    }

    /** Says which ids name two things. */
    void report(Troubles troubles) {
        for (String path : twice) {
            String id = path.substring(path.lastIndexOf('.') + 1);
            troubles.wrong(
                    path,
                    "\"" + id + "\" is the name of " + phrases.get(id) + " too, " + paths.get(id),
                    "Give one of them another name.");
        }
    }

    /** Rank of each thing's path in the file. */
    Map<String, Integer> order() {
        Map<String, Integer> order = new LinkedHashMap<>();
        paths.values().forEach(path -> order.put(path, order.size()));
        for (String section : List.of("limits", "materials", "climate", "stances", "situations", "options")) {
            order.put(section, order.size());
        }
        return order;
    }

    boolean knows(String id) {
        return paths.containsKey(id);
    }

    /** Where the thing stands. */
    String path(String id) {
        return paths.getOrDefault(id, "");
    }

    /** "there is no X", or "X is a fixture", with the nearest that would do. */
    void missing(String path, String wrong, Collection<String> wanted, String wantedPhrase, Troubles troubles) {
        String says = knows(wrong)
                ? "\"" + wrong + "\" is " + phrases.get(wrong) + ", not " + wantedPhrase
                : "there is no \"" + wrong + "\"";
        String advice = NearestName.of(wrong, wanted)
                .map(id -> "Nearest: \"" + id + "\"" + (phrases.containsKey(id) ? " (" + phrases.get(id) + ")." : "."))
                .orElse(wanted.isEmpty() ? "There is none to name." : "There is: " + String.join(", ", wanted) + ".");
        troubles.wrong(path, says, advice);
    }
}
