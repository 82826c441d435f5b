package org.spile.analysis.whole;

import java.util.regex.Pattern;

/** Which end of a swept value one would rather have. */
public enum Aim {
    /** As little as will do, as a ceiling's drop. */
    LEAST("least"),
    /** As much as there is room for, as insulation. */
    MOST("most"),
    /** Either way. */
    NONE("");

    private static final Pattern LAYER = Pattern.compile(".*\\.(linings|layers)\\[\\d+]\\..*");

    private final String word;

    Aim(String word) {
        this.word = word;
    }

    /** As it is typed behind a range; empty for none. */
    public String word() {
        return word;
    }

    /** What is wanted of a value if nobody says: little of a drop, much of a layer, of another value neither. */
    public static Aim usual(String path) {
        if (path.endsWith(".drop")) {
            return LEAST;
        }
        return LAYER.matcher(path).matches() ? MOST : NONE;
    }

    /** So that more is better; 0 if either way is as good. */
    double worth(double value) {
        return switch (this) {
            case LEAST -> -value;
            case MOST -> value;
            case NONE -> 0;
        };
    }
}
