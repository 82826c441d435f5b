package org.spile.geometry.file;

import java.util.List;

/**
 * The text of a house file as maps, lists and texts that know their places.
 *
 * @param text the text, without byte order mark
 * @param root the top map; empty if the text is unusable
 * @param problems what is wrong with its form, in the order of the text
 * @param broken whether the form is so broken that nothing more can be said: then there is one problem
 */
record Tree(String text, MapNode root, List<Problem> problems, boolean broken) {
    Tree {
        problems = List.copyOf(problems);
    }

    /**
     * Grows the tree of a text.
     *
     * <p>Never fails: a fault of syntax, too deep nesting or too many entries make a broken tree with one problem; keys
     * typed twice, anchors, aliases, tags, merge keys and the traps of {@link YamlTraps} are problems beside the tree.
     *
     * @param file the file's name, for places
     * @param text the text, without byte order mark
     */
    static Tree of(String file, String text) {
        return new TreeBuilder(file, text).build();
    }
}
