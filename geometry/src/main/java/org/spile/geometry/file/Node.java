package org.spile.geometry.file;

/** A value of a house file: a map, a list or a text. All text stays text: {@code no}, {@code 12:30} and {@code 010}. */
sealed interface Node permits MapNode, ListNode, TextNode {
    /** Where it begins. */
    Place place();

    /** Its characters; for a block from its first key or dash to the end of its last value. */
    Span span();

    /** Whether another node holds the same keys and texts, wherever and in whatever style. */
    boolean sameAs(Node other);
}
