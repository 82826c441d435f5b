package org.spile.geometry.file;

/** The value of an edit, read. */
sealed interface NewValue {
    /**
     * A single value.
     *
     * @param text what it says
     */
    record Single(String text) implements NewValue {}

    /**
     * A whole map or list.
     *
     * @param words as typed
     * @param node what it says
     */
    record Whole(String words, Node node) implements NewValue {}

    /**
     * Words that are no value.
     *
     * @param says what is wrong
     * @param advice what to write
     */
    record Wrong(String says, String advice) implements NewValue {}

    static NewValue of(String words) {
        if (words.isEmpty()) {
            return new Wrong("There is no value.", "Write PATH=VALUE.");
        }
        if (words.chars().anyMatch(Character::isISOControl)) {
            return new Wrong("The value is more than one line.", "Write it in one line.");
        }
        boolean whole = words.startsWith("{") || words.startsWith("[");
        boolean quoted = words.startsWith("\"") || words.startsWith("'");
        if (!whole && !quoted) {
            return new Single(words);
        }
        Tree tree = Tree.of("", "v: " + words + "\n");
        if (tree.problems().isEmpty() && tree.root().entries().size() == 1) {
            Node node = tree.root().entries().get(0).value();
            return node instanceof TextNode text ? new Single(text.text()) : new Whole(words, node);
        }
        if (quoted) {
            return new Single(words);
        }
        return tree.problems().isEmpty()
                ? new Wrong("The value is more than one thing.", "Put all of it in one pair of braces or brackets.")
                : new Wrong(
                        tree.problems().get(0).says(), tree.problems().get(0).advice());
    }
}
