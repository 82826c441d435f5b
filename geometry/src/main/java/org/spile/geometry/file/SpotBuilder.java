package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * Turns the tree of a file into values with paths, and fills in what a {@code like} copies.
 *
 * <p>A copy has the entries of its original, each whole, unless it types them itself; its title is never copied. The
 * copied values have the paths of the copy and the places of the original.
 */
final class SpotBuilder {
    private static final String LIKE = "like";

    private final Map<String, MapNode> things = new HashMap<>();
    private final Problems problems;

    SpotBuilder(Problems problems) {
        this.problems = problems;
    }

    Spot build(MapNode root) {
        var entries = new ArrayList<Spot.Entry>();
        for (MapNode.Entry section : root.entries()) {
            boolean ofThings = Sections.THINGS.contains(section.name()) && section.value() instanceof MapNode;
            Spot value = ofThings
                    ? section(section.name(), (MapNode) section.value())
                    : spot(section.name(), section.value(), false);
            entries.add(new Spot.Entry(section.name(), section.key().place(), value));
        }
        return map("", root.place(), entries, false);
    }

    private Spot section(String name, MapNode section) {
        things.clear();
        for (MapNode.Entry thing : section.entries()) {
            if (thing.value() instanceof MapNode map) {
                things.put(thing.name(), map);
            }
        }
        var entries = new ArrayList<Spot.Entry>();
        for (MapNode.Entry thing : section.entries()) {
            String path = name + "." + thing.name();
            Spot value = thing.value() instanceof MapNode map && map.entry(LIKE).isPresent()
                    ? copy(path, thing.name(), map)
                    : spot(path, thing.value(), false);
            entries.add(new Spot.Entry(thing.name(), thing.key().place(), value));
        }
        return map(name, section.place(), entries, false);
    }

    private Spot copy(String path, String id, MapNode own) {
        var entries = new ArrayList<Spot.Entry>();
        for (MapNode.Entry entry : own.entries()) {
            entries.add(entry(path, entry, false));
        }
        var seen = new LinkedHashSet<>(Set.of(id));
        Optional<MapNode> original = original(path, own, seen);
        while (original.isPresent()) {
            for (MapNode.Entry entry : original.get().entries()) {
                boolean typed = entries.stream().anyMatch(there -> there.key().equals(entry.name()));
                if (!typed && !entry.name().equals("title")) {
                    entries.add(entry(path, entry, true));
                }
            }
            original = original.get().entry(LIKE).isPresent() ? original(path, original.get(), seen) : Optional.empty();
        }
        return map(path, own.place(), entries, false);
    }

    private Optional<MapNode> original(String path, MapNode copy, Set<String> seen) {
        Node name = copy.value(LIKE).orElseThrow();
        String words = name instanceof TextNode text ? text.text() : "";
        if (!seen.add(words)) {
            problems.error(
                    name.place(),
                    path + "." + LIKE,
                    "it is a copy of itself, by way of " + String.join(", ", seen) + ".",
                    "One of them must stand by itself.");
            return Optional.empty();
        }
        if (!things.containsKey(words)) {
            problems.error(
                    name.place(),
                    path + "." + LIKE,
                    "there is no \"" + words + "\" in its section.",
                    NearestName.of(words, things.keySet().stream().sorted().toList())
                            .map(nearest -> "Nearest: \"" + nearest + "\".")
                            .orElse("Copy a thing of the same section."));
        }
        return Optional.ofNullable(things.get(words));
    }

    private Spot.Entry entry(String path, MapNode.Entry entry, boolean copied) {
        String below = path.isEmpty() ? entry.name() : path + "." + entry.name();
        return new Spot.Entry(entry.name(), entry.key().place(), spot(below, entry.value(), copied));
    }

    private Spot spot(String path, Node node, boolean copied) {
        if (node instanceof MapNode map) {
            List<Spot.Entry> entries = map.entries().stream()
                    .map(entry -> entry(path, entry, copied))
                    .toList();
            return map(path, map.place(), entries, copied);
        }
        if (node instanceof ListNode list) {
            var items = new ArrayList<Spot>();
            for (Node item : list.items()) {
                items.add(spot(path + "[" + (items.size() + 1) + "]", item, copied));
            }
            return new Spot(path, list.place(), Spot.What.LIST, "", false, List.of(), items, copied);
        }
        TextNode text = (TextNode) node;
        Spot.What what = text.missing() ? Spot.What.NOTHING : Spot.What.TEXT;
        boolean plain = text.style() == TextNode.Style.PLAIN;
        return new Spot(path, text.place(), what, text.text(), plain, List.of(), List.of(), copied);
    }

    private static Spot map(String path, Place place, List<Spot.Entry> entries, boolean copied) {
        return new Spot(path, place, Spot.What.MAP, "", false, entries, List.of(), copied);
    }
}
