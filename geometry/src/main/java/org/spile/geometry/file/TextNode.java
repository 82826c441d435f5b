package org.spile.geometry.file;

/**
 * A single value.
 *
 * @param place where it begins
 * @param span its characters, quotes included
 * @param text what it says; empty if nothing was written
 * @param style how it was written
 */
record TextNode(Place place, Span span, String text, Style style) implements Node {
    /** How a text was written. */
    enum Style {
        PLAIN,
        QUOTED,
        BLOCK
    }

    /** Whether a key was given no value at all. */
    boolean missing() {
        return style == Style.PLAIN && text.isEmpty();
    }

    @Override
    public boolean sameAs(Node other) {
        return other instanceof TextNode that && text.equals(that.text);
    }
}
