package org.spile.exporters.table;

/** Words filled into lines. A word longer than a line stands alone and whole, so that a path can be copied. */
final class Paragraph {
    static final int WIDTH = 80;

    private Paragraph() {}

    /**
     * The lines, each with a line feed behind it.
     *
     * @param first what the first line starts with
     * @param others what each further line starts with
     */
    static String of(String first, String others, String words) {
        var lines = new StringBuilder();
        var line = new StringBuilder(first);
        boolean fresh = true;
        for (var word : words.split(" ", -1)) {
            if (!fresh && length(line) + 1 + length(word) > WIDTH) {
                lines.append(line).append('\n');
                line = new StringBuilder(others);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        return lines.append(line).append('\n').toString();
    }

    static int length(CharSequence words) {
        return Character.codePointCount(words, 0, words.length());
    }

    static String right(String words, int width) {
        return " ".repeat(Math.max(0, width - length(words))) + words;
    }

    static String left(String words, int width) {
        return words + " ".repeat(Math.max(0, width - length(words)));
    }
}
