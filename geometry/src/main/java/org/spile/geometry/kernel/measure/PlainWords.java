package org.spile.geometry.kernel.measure;

/** Words with characters of one meaning made one: primes, minus signs, fractions, raised digits, spaces. */
final class PlainWords {
    private static final String FROM = "\u2032\u2019\u2018\u02b9\u2033\u201d\u201c\u02ba\u2212\u2013\u2010\u2011\u00d7"
            + "\u2044\u00b2\u00b3\u2082\u00ba\u00a0\u2009\u202f\u2007\t";
    private static final String TO = "''''\"\"\"\"----x/232\u00b0     ";
    private static final String FRACTIONS =
            "\u00bd1/2 \u00bc1/4 \u00be3/4 \u215b1/8 \u215c3/8 \u215d5/8 \u215e7/8 \u21531/3 \u21542/3 ";

    private PlainWords() {}

    static String of(String words) {
        var plain = new StringBuilder(words.length() + 8);
        for (int i = 0; i < words.length(); i++) {
            append(plain, words.charAt(i));
        }
        return plain.toString().replace("''", "\"").strip().replaceAll(" +", " ");
    }

    private static void append(StringBuilder plain, char c) {
        int known = FROM.indexOf(c);
        int fraction = c < 128 ? -1 : FRACTIONS.indexOf(c);
        if (known >= 0) {
            plain.append(TO.charAt(known));
        } else if (fraction >= 0) {
            boolean mixed = plain.length() > 0 && Character.isDigit(plain.charAt(plain.length() - 1));
            plain.append(mixed ? " " : "").append(FRACTIONS, fraction + 1, FRACTIONS.indexOf(" ", fraction));
        } else if (c == '\u2026') {
            plain.append("..");
        } else {
            plain.append(c);
        }
    }
}
