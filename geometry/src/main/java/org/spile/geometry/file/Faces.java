package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/** The words for faces and axes, and which of them a container has. */
final class Faces {
    static final List<String> AXES = List.of("x", "y", "z");
    static final List<String> SIDES = List.of("rear", "front", "left", "right");
    static final List<String> ALL = List.of(
            "rear", "front", "left", "right", "floor", "ceiling", "bottom", "top", "deck", "roof", "x", "y", "z");
    static final List<String> OF_BODY = List.of("rear", "front", "left", "right", "bottom", "top");
    static final List<String> OF_BODY_AND_AXES =
            List.of("rear", "front", "left", "right", "bottom", "top", "x", "y", "z");
    static final List<String> OF_SPACE = List.of("rear", "front", "left", "right", "floor", "ceiling", "top");
    static final List<String> WAYS = List.of("forward", "aft", "left", "right", "up", "down");

    private static final Map<String, List<String>> BY_SECTION = Map.of(
            "rooms", List.of("rear", "front", "left", "right", "floor", "ceiling", "x", "y", "z"),
            "cavities", List.of("rear", "front", "left", "right", "floor", "ceiling", "top", "x", "y", "z"),
            "trailers", List.of("rear", "front", "left", "right", "deck", "roof", "x", "y", "z"));

    private Faces() {}

    /** Tells of faces that the container named doesn't have. */
    static void check(Spot at, String container, Scribe scribe) {
        Optional<Names.Named> named = scribe.names().named(container);
        if (named.isEmpty() || !BY_SECTION.containsKey(named.get().section())) {
            return;
        }
        List<String> faces = BY_SECTION.get(named.get().section());
        for (Spot.Entry entry : at.entries()) {
            if (!faces.contains(entry.key()) && ALL.contains(entry.key())) {
                scribe.wrongKey(
                        at,
                        entry,
                        ": " + container + " is " + named.get().noun() + " and has no \"" + entry.key() + "\".",
                        NearestName.of(entry.key(), faces)
                                        .map(face -> "Nearest: \"" + face + "\". ")
                                        .orElse("") + "It has "
                                + Phrases.or(faces.subList(0, faces.size() - AXES.size())) + "; or x, y, z.");
            }
        }
    }
}
