package org.spile.geometry.file;

import java.util.List;

/** Lists in a sentence. */
final class Phrases {
    private Phrases() {}

    /** {@code a, b or c}. */
    static String or(List<String> words) {
        return joined(words, " or ");
    }

    /** {@code a, b and c}. */
    static String and(List<String> words) {
        return joined(words, " and ");
    }

    private static String joined(List<String> words, String last) {
        int end = words.size() - 1;
        return end < 1 ? String.join("", words) : String.join(", ", words.subList(0, end)) + last + words.get(end);
    }
}
