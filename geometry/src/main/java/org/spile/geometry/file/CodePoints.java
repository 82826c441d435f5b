package org.spile.geometry.file;

import java.util.stream.IntStream;

/** Turns the parser's count of whole characters into an index of the text, where some take two places. */
final class CodePoints {
    private final int[] indexes;

    private CodePoints(int[] indexes) {
        this.indexes = indexes;
    }

    static CodePoints of(String text) {
        boolean plain = text.chars().noneMatch(c -> Character.isHighSurrogate((char) c));
        return plain
                ? new CodePoints(new int[0])
                : new CodePoints(IntStream.rangeClosed(0, text.length())
                        .filter(i -> i == 0
                                || i == text.length()
                                || !(Character.isLowSurrogate(text.charAt(i))
                                        && Character.isHighSurrogate(text.charAt(i - 1))))
                        .toArray());
    }

    int charIndex(int codePoint) {
        return indexes.length == 0 ? codePoint : indexes[codePoint];
    }
}
