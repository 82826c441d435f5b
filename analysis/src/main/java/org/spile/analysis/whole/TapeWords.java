package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldUnit;

/** Says what a number of the house file is, for somebody with a tape in hand, who doesn't know the file's keys. */
final class TapeWords {
    private static final Map<String, String> SIZES = Map.of(
            "long", "length, fore and aft",
            "wide", "width, side to side",
            "high", "height, bottom to top",
            "round", "diameter");
    /** The same of what can be turned: a unit's length lies along its air. */
    private static final Map<String, String> OWN_SIZES = Map.of(
            "long", "length, along its air",
            "wide", "width, across its air",
            "high", "height, bottom to top",
            "round", "diameter");

    private static final Map<String, String> DOCK = Map.of(
            "apart", "gap between the two trailers' faces",
            "aside", "shift sideways against the other trailer",
            "level", "deck above the other trailer's deck",
            "turn", "angle out of parallel with the other trailer");
    private static final Set<String> AXES = Set.of("x", "y", "z");
    private static final Set<String> WAYS = Set.of("forward", "aft", "left", "right", "up", "down");
    private static final Set<String> SURFACES =
            Set.of("ceiling", "floor", "top", "roof", "left", "right", "rear", "front");

    private final ToldHouse told;
    private final Map<String, String> spaces = new HashMap<>();

    TapeWords(House house) {
        this.told = house.told();
        for (Part part : house.scene(house.stances().get(0)).parts()) {
            part.spaces().stream().findFirst().ifPresent(space -> spaces.putIfAbsent(part.thing(), space));
        }
    }

    /** What to hold the tape between, one phrase without a full stop: {@code cooler: height, bottom to top}. */
    String of(String path) {
        List<Step> steps = steps(path);
        if (steps.size() < 3) {
            return path;
        }
        String thing = thing(steps);
        List<Step> rest = steps.subList(2, steps.size());
        String what = what(steps, rest);
        return thing + ": " + (what.isEmpty() ? "the value at " + path : what);
    }

    /**
     * One step of a path.
     *
     * @param key the key
     * @param item the item's number; 0 if it is no list
     */
    private record Step(String key, int item) {}

    private static List<Step> steps(String path) {
        List<Step> steps = new ArrayList<>();
        for (String word : path.split("\\.", -1)) {
            int bracket = word.indexOf('[');
            steps.add(
                    bracket < 0
                            ? new Step(word, 0)
                            : new Step(
                                    word.substring(0, bracket),
                                    Integer.parseInt(word.substring(bracket + 1, word.length() - 1))));
        }
        return steps;
    }

    private String thing(List<Step> steps) {
        String id = steps.get(1).key();
        if (steps.size() > 3 && steps.get(2).key().equals("openings")) {
            return steps.get(3).key() + " of " + id;
        }
        return id;
    }

    private String what(List<Step> steps, List<Step> rest) {
        Step first = rest.get(0);
        Step last = rest.get(rest.size() - 1);
        Step before = rest.size() < 2 ? new Step("", 0) : rest.get(rest.size() - 2);
        if (before.key().equals("linings") || before.key().equals("layers")) {
            return "thickness of the " + last.key() + " (layer " + before.item() + surface(first, "on its") + ")";
        }
        if (before.key().equals("profile")) {
            return "point " + before.item() + surface(first, "of its") + ", " + profile(last.key());
        }
        boolean at = rest.size() == 2 && last.key().equals("at");
        if (SURFACES.contains(first.key()) && (at || rest.size() == 1)) {
            return surfaceAt(steps, first.key());
        }
        if (first.key().equals("dock")) {
            return DOCK.getOrDefault(last.key(), "");
        }
        if (first.key().equals("path")) {
            return leg(first.item(), rest.subList(1, rest.size()));
        }
        String part = part(rest);
        if (before.key().equals("at")) {
            return part + from(steps, last);
        }
        return part + size(steps, last.key());
    }

    private static String surface(Step step, String joint) {
        return SURFACES.contains(step.key()) ? " " + joint + " " + step.key() : "";
    }

    private static String profile(String key) {
        return switch (key) {
            case "up" -> "how high, straight up";
            case "down" -> "how far down";
            default -> "how far in from the " + key + " edge";
        };
    }

    private String surfaceAt(List<Step> steps, String surface) {
        String over = Optional.ofNullable(told.cavities().get(steps.get(1).key()))
                .flatMap(cavity -> cavity.over())
                .map(room -> " of " + room)
                .orElse("");
        return switch (surface) {
            case "ceiling" -> "finished floor" + over + " up to the face of the ceiling";
            case "floor" -> "deck up to the finished floor";
            case "top", "roof" -> "up to the bare " + surface;
            default -> "distance of its " + surface + " side";
        };
    }

    private String leg(int item, List<Step> rest) {
        if (rest.isEmpty()) {
            return "";
        }
        String leg = "leg " + item + ", ";
        Step last = rest.get(rest.size() - 1);
        if (rest.get(0).key().equals("at") && rest.size() == 2) {
            return leg + "its end, from the " + last.key() + " to its middle line";
        }
        if (WAYS.contains(last.key())) {
            return leg + "how far " + last.key() + " along its middle line";
        }
        return SIZES.containsKey(last.key()) ? leg + "clear " + SIZES.get(last.key()) : "";
    }

    /** A named part of the thing, as its spigot or its room for service. */
    private static String part(List<Step> rest) {
        String section = rest.get(0).key();
        if (rest.size() < 3) {
            return "";
        }
        String name = rest.get(1).key();
        return switch (section) {
            case "spigots" -> "spigot " + name + ", ";
            case "ports" -> "port " + name + ", ";
            case "service" -> "room for " + name + ", ";
            case "bodies" -> "body " + rest.get(0).item() + ", ";
            default -> "";
        };
    }

    private String size(List<Step> steps, String key) {
        boolean unit = steps.get(0).key().equals("units");
        String size = (unit ? OWN_SIZES : SIZES).getOrDefault(key, "");
        if (!size.isEmpty()) {
            return size;
        }
        return switch (key) {
            case "out" -> "how far it stands out";
            case "undercut" -> "gap under the leaf";
            case "by" -> "how far it opens";
            case "drop" -> "how far it is lowered";
            default -> WAYS.contains(key) ? "travel " + key : "";
        };
    }

    private String from(List<Step> steps, Step last) {
        String face = last.key();
        boolean out = out(steps, face);
        String edge = switch (last.item()) {
            case 1 -> "its near edge";
            case 2 -> "its far edge";
            default -> isPort(steps) ? "its middle" : "its " + facing(face, out);
        };
        if (AXES.contains(face)) {
            return "coordinate " + face + " of " + edge;
        }
        boolean own = steps.size() > 4 && !steps.get(2).key().equals("openings");
        String of = own
                ? " of " + steps.get(1).key()
                : container(steps).map(id -> " of " + id).orElse(" of its space");
        return "the " + face + of + (out ? " out to " : " to ") + edge;
    }

    /** Whether it is a place of something without edges: a port. */
    private static boolean isPort(List<Step> steps) {
        return steps.get(2).key().equals("ports");
    }

    /** The side of a thing that lies towards a face of what it is in. */
    private static String facing(String face, boolean out) {
        return switch (face) {
            case "top", "ceiling", "roof" -> out ? "underside" : "top";
            case "floor", "deck", "bottom" -> out ? "top" : "underside";
            case "rear" -> out ? "front" : "rear";
            case "front" -> out ? "rear" : "front";
            case "left" -> out ? "right side" : "left side";
            case "right" -> out ? "left side" : "right side";
            default -> "middle";
        };
    }

    private Optional<String> container(List<Step> steps) {
        String id = steps.get(1).key();
        if (steps.get(0).key().equals("units")) {
            ToldUnit unit = told.units().get(id);
            if (unit != null && !unit.joins().isEmpty()) {
                return Optional.of(unit.joins());
            }
        }
        String thing = steps.get(0).key() + "." + id;
        return placed(steps.get(0).key(), id).flatMap(Placed::in).or(() -> Optional.ofNullable(spaces.get(thing)));
    }

    private boolean out(List<Step> steps, String face) {
        return placed(steps.get(0).key(), steps.get(1).key())
                .map(placed -> placed.at().stream().anyMatch(at -> isOut(at, face)))
                .orElse(false);
    }

    private static boolean isOut(FaceDistance at, String face) {
        return at.face().equals(face) && at.out();
    }

    private Optional<Placed> placed(String section, String id) {
        Collection<Placed> all = switch (section) {
            case "rooms" ->
                told.rooms().values().stream().map(each -> each.placed()).toList();
            case "cavities" ->
                told.cavities().values().stream().map(each -> each.placed()).toList();
            case "fixtures" ->
                told.fixtures().values().stream().map(each -> each.placed()).toList();
            case "movers" ->
                told.movers().values().stream().map(each -> each.placed()).toList();
            case "units" ->
                told.units().values().stream().map(each -> each.placed()).toList();
            case "terminals" ->
                told.terminals().values().stream().map(each -> each.placed()).toList();
            default -> List.of();
        };
        return all.stream().filter(each -> each.id().equals(id)).findFirst();
    }
}
