package org.spile.geometry.kernel.measure;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The name probably meant by a misspelt one.
 *
 * <p>Near is one slip for every three letters, but one at least and three at most; a slip is a letter too many, one too
 * few, a wrong one, or two neighbours swapped (Damerau 1964, no part edited twice). Case counts for nothing.
 */
public final class NearestName {
    private static final int LONGEST = 64;

    private NearestName() {}

    /** The nearest of some names, the first of equals; none if all are far off. */
    public static Optional<String> of(String wrong, Collection<String> names) {
        String best = null;
        int least = Math.max(1, Math.min(3, wrong.length() / 3)) + 1;
        if (wrong.isEmpty() || wrong.length() > LONGEST) {
            return Optional.empty();
        }
        for (String name : names) {
            if (Math.abs(name.length() - wrong.length()) < least && !name.isEmpty()) {
                int slips = slips(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
                if (slips < least && slips < name.length()) {
                    least = slips;
                    best = name;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** How many slips lie between two words. */
    static int slips(String one, String other) {
        int[] before = new int[other.length() + 1];
        int[] last = new int[other.length() + 1];
        int[] now = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int wrong = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(last[j], now[j - 1]) + 1, last[j - 1] + wrong);
                if (i > 1 && j > 1 && swapped(one, other, i, j)) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] spare = before;
            before = last;
            last = now;
            now = spare;
        }
        return last[other.length()];
    }

    private static boolean swapped(String one, String other, int i, int j) {
        return one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
    }
}
