package org.spile.geometry.file;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The rules of ids: how they are spelt, which are taken, and that no two things share one. */
final class Ids {
    private Ids() {}

    /** Whether a key is spelt as an id; if not, it is told. */
    static boolean spelt(Spot map, Spot.Entry entry, Scribe scribe) {
        String id = entry.key();
        if (Names.SWITCH_WORDS.contains(id)) {
            scribe.wrongKey(
                    map,
                    entry,
                    ": \"" + id
                            + "\" can't be a name: other YAML readers turn on, off, yes and no into true and false.",
                    "Call it something else.");
            return false;
        }
        if (KeyNames.ID.matcher(id).matches()) {
            return true;
        }
        String better =
                id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        scribe.wrongKey(
                map,
                entry,
                ": \"" + id + "\" isn't a name: small letters, digits and hyphens, a letter or digit first.",
                better.isEmpty() ? "Write cooler-2." : "Write " + better + ", and title: \"" + id + "\".");
        return false;
    }

    /** Tells of things that share an id, and of ids that mean something else. */
    static void check(Spot root, Scribe scribe) {
        Map<String, String> first = new HashMap<>();
        for (String section : Sections.THINGS) {
            root.child(section).ifPresent(things -> {
                for (Spot.Entry thing : things.entries()) {
                    one(things, thing, first, scribe);
                    thing.value()
                            .child("openings")
                            .ifPresent(openings ->
                                    openings.entries().forEach(opening -> one(openings, opening, first, scribe)));
                }
            });
        }
    }

    private static void one(Spot things, Spot.Entry thing, Map<String, String> first, Scribe scribe) {
        if (thing.value().copied()) {
            return;
        }
        if (Names.TAKEN.contains(thing.key())) {
            scribe.wrongKey(
                    things, thing, ": \"" + thing.key() + "\" is a word of its own here.", "Call it something else.");
        }
        String before = first.putIfAbsent(thing.key(), thing.value().path());
        if (before != null) {
            scribe.wrongKey(
                    things,
                    thing,
                    ": \"" + thing.key() + "\" is already " + before + ".",
                    "A name stands for one thing in the whole file.");
        }
    }
}
