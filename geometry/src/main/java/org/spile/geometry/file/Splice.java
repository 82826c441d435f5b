package org.spile.geometry.file;

/**
 * A piece of text to put in place of another.
 *
 * @param start index of the first character to go
 * @param end index after the last
 * @param words what to put there
 */
record Splice(int start, int end, String words) {
    static Splice over(Span span, String words) {
        return new Splice(span.start(), span.end(), words);
    }

    static Splice at(int index, String words) {
        return new Splice(index, index, words);
    }

    String in(String text) {
        return text.substring(0, start) + words + text.substring(end);
    }
}
