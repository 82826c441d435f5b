package org.spile.geometry.kernel.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value's words and its tolerance's words, told apart.
 *
 * @param value the words before the tolerance
 * @param plus the words of the tolerance upwards; empty if there is none
 * @param minus the words of the tolerance downwards; empty if there is none
 */
record ToleranceText(String value, String plus, String minus) {
    private static final Pattern EVEN = Pattern.compile("(.*?)(?:\u00b1|\\+ ?/ ?-|\\+-)(.*)");
    private static final Pattern PLUS_FIRST = Pattern.compile("(.*?)\\+([^-+]+)/ ?-([^-+]+)");
    private static final Pattern MINUS_FIRST = Pattern.compile("(.*)-([^-+]+)/ ?\\+([^-+]+)");

    static ToleranceText of(String text) {
        Matcher even = EVEN.matcher(text);
        if (even.matches()) {
            String both = even.group(2).isBlank() ? " " : even.group(2);
            return new ToleranceText(even.group(1), both, both);
        }
        Matcher plusFirst = PLUS_FIRST.matcher(text);
        if (plusFirst.matches()) {
            return new ToleranceText(plusFirst.group(1), plusFirst.group(2), plusFirst.group(3));
        }
        Matcher minusFirst = MINUS_FIRST.matcher(text);
        if (minusFirst.matches()) {
            return new ToleranceText(minusFirst.group(1), minusFirst.group(3), minusFirst.group(2));
        }
        return new ToleranceText(text, "", "");
    }

    boolean typed() {
        return !plus.isEmpty();
    }
}
