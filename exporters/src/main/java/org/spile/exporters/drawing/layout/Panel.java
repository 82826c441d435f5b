package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A block of words beside the views: notes, cautions, the list of findings.
 *
 * @param heading what it is
 * @param items its entries, in order
 */
public record Panel(String heading, List<Item> items) {
    /** Copies the entries. */
    public Panel {
        items = List.copyOf(items);
    }

    /** A panel of entries numbered from 1. */
    public static Panel numbered(String heading, List<String> entries) {
        var items = new ArrayList<Item>();
        for (var entry : entries) {
            items.add(new Item(Integer.toString(items.size() + 1), entry));
        }
        return new Panel(heading, items);
    }

    /**
     * One entry.
     *
     * @param label stands before it: a number, a letter; may be empty
     * @param says the words, broken into lines as room demands
     */
    public record Item(String label, String says) {}
}
