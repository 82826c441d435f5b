package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;

/**
 * Changes values of a house file in its text, so that comments and layout stay byte for byte elsewhere.
 *
 * <p>A value without tolerance, origin or {@code out} keeps the old ones, and the old unit where one is needed. A single
 * value that an edit goes below becomes a map: {@code ceiling.drop=8} turns {@code ceiling: 1950} into {@code ceiling: {at:
 * 1950, drop: 8}}. Keys that are missing are added at the end of their map in its own style; what a thing has only by
 * {@code like} is first written out in the copy. {@code path[1]} and {@code path[2]} also name the two numbers of a range or a
 * rated point. Every result is read again and compared before it is accepted.
 */
public final class Edits {
    private Edits() {}

    /**
     * Applies edits one after the other.
     *
     * @param text the text of a house file
     * @param edits what to change, in order
     * @return the new text, or the problems of the text or of every edit that can't be applied
     */
    public static Edited apply(String text, List<Edit> edits) {
        boolean marked = text.startsWith("\ufeff");
        Tree tree = Tree.of("house file", marked ? text.substring(1) : text);
        if (!tree.problems().isEmpty()) {
            return new Edited.Undone(tree.problems());
        }
        var problems = new ArrayList<Problem>();
        for (Edit edit : edits) {
            Spliced spliced = new EditRun(edit).on(tree);
            if (spliced instanceof Spliced.Good good) {
                tree = good.tree();
            } else if (spliced instanceof Spliced.Bad bad) {
                problems.add(bad.problem());
            }
        }
        return problems.isEmpty()
                ? new Edited.Done((marked ? "\ufeff" : "") + tree.text())
                : new Edited.Undone(problems);
    }
}
