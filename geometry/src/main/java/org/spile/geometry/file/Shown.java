package org.spile.geometry.file;

/** Words of strange files, made fit for one line of ours. */
final class Shown {
    private static final int LONGEST = 40;

    private Shown() {}

    /** Words as the end of a sentence. */
    static String sentence(String words) {
        String cut = cut(words.lines().findFirst().orElse("").strip());
        return cut.endsWith(".") ? cut : cut + ".";
    }

    static String cut(String words) {
        String printable = words.codePoints()
                .limit(LONGEST + 1L)
                .map(c -> Character.isISOControl(c) ? 0xfffd : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return printable.codePointCount(0, printable.length()) > LONGEST
                ? printable.substring(0, printable.offsetByCodePoints(0, LONGEST)) + "..."
                : printable;
    }
}
