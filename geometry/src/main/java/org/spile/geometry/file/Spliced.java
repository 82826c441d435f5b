package org.spile.geometry.file;

/** What came of one edit. */
sealed interface Spliced {
    /**
     * It was applied.
     *
     * @param tree the new text's tree
     */
    record Good(Tree tree) implements Spliced {}

    /**
     * It was not.
     *
     * @param problem why
     */
    record Bad(Problem problem) implements Spliced {}
}
