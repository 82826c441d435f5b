package org.spile.geometry.file;

/**
 * A range of characters of a text.
 *
 * @param start index of the first
 * @param end index after the last
 */
record Span(int start, int end) {
    String of(String text) {
        return text.substring(start, end);
    }
}
