package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;

/**
 * One value of the house file with its path: a text, a list, a map or nothing.
 *
 * @param path as {@code units.cooler.at}; empty for the whole file
 * @param place where it stands
 * @param text the words of a text; empty otherwise
 * @param plain whether a text stands without quotes
 * @param kind what it is
 * @param entries of a map, in the order of the file
 * @param items of a list
 * @param copied whether it stands here only because of a {@code like}
 */
record Spot(
        String path,
        Place place,
        What kind,
        String text,
        boolean plain,
        List<Entry> entries,
        List<Spot> items,
        boolean copied) {

    enum What {
        TEXT,
        LIST,
        MAP,
        NOTHING
    }

    /**
     * A key and its value.
     *
     * @param key as typed
     * @param keyPlace where the key stands
     */
    record Entry(String key, Place keyPlace, Spot value) {}

    Spot {
        entries = List.copyOf(entries);
        items = List.copyOf(items);
    }

    boolean isText() {
        return kind == What.TEXT;
    }

    boolean isList() {
        return kind == What.LIST;
    }

    boolean isMap() {
        return kind == What.MAP;
    }

    boolean isNothing() {
        return kind == What.NOTHING;
    }

    /** The entry of that key, if it is a map that has it. */
    Optional<Entry> entry(String key) {
        for (Entry entry : entries) {
            if (entry.key().equals(key)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** The value at that key, if there is one. */
    Optional<Spot> child(String key) {
        return entry(key).map(Entry::value);
    }

    /** The last key of the path. */
    String lastStep() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The path of the map or list it stands in. */
    String parentPath() {
        int item = path.endsWith("]") ? path.lastIndexOf('[') : -1;
        int cut = item >= 0 ? item : path.lastIndexOf('.');
        return cut < 0 ? "" : path.substring(0, cut);
    }

    /** This map with other entries. */
    Spot withEntries(List<Entry> others) {
        return new Spot(path, place, kind, text, plain, others, items, copied);
    }

    /** What stands there, for a message. */
    String found() {
        return switch (kind) {
            case TEXT -> "\"" + text + "\"";
            case LIST -> "a list";
            case MAP ->
                entries.isEmpty()
                        ? "an empty map"
                        : "a map (\"" + entries.get(0).key() + "\": ...)";
            case NOTHING -> "nothing";
        };
    }
}
