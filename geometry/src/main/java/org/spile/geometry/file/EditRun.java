package org.spile.geometry.file;

import java.util.Optional;

/** Applies one edit to one tree. */
final class EditRun {
    private static final int MOST_COPIES = 20;

    private final Edit edit;

    EditRun(Edit edit) {
        this.edit = edit;
    }

    Spliced on(Tree tree) {
        NewValue value = NewValue.of(edit.value());
        if (value instanceof NewValue.Wrong wrong) {
            return bad(wrong.says(), wrong.advice());
        }
        Optional<DocumentPath> path = DocumentPath.of(edit.path());
        if (path.isEmpty()) {
            return bad("\"" + edit.path() + "\" is no path.", "Keys are joined by dots: cavities.loft.high.");
        }
        return run(tree, path.get(), value);
    }

    /** What a thing has by {@code like} is first written out in it, key by key; then the edit finds it there. */
    private Spliced run(Tree tree, DocumentPath path, NewValue value) {
        Tree now = tree;
        for (int copies = 0; copies < MOST_COPIES; copies++) {
            EditWalk walk = EditWalk.down(now, path, value instanceof NewValue.Single);
            Optional<EditFault> fault = EditFault.of(walk, value);
            if (fault.isPresent()) {
                return bad(fault.get().says(), fault.get().advice());
            }
            var move = new EditMove(now, walk, value);
            Optional<Splice> copy = move.copy();
            Tree next = Tree.of("house file", copy.orElseGet(move::splice).in(now.text()));
            if (!next.problems().isEmpty() || !Difference.onlyAt(path.steps(), tree.root(), next.root())) {
                return bad("This can't be written there without changing more.", "Change the file by hand.");
            }
            if (copy.isEmpty()) {
                return new Spliced.Good(next);
            }
            now = next;
        }
        return bad("It copies a copy of itself.", "Break the ring of like: first.");
    }

    private Spliced.Bad bad(String says, String advice) {
        String words = edit.toString();
        String shown = words.length() > 80 ? words.substring(0, 80) + "..." : words;
        Place place = Place.whole("edit \"" + shown.replaceAll("\\p{Cntrl}", "\ufffd") + "\"");
        return new Spliced.Bad(Problem.error(place, "", says, advice));
    }
}
