package org.spile.analysis.finding;

/**
 * Where a demand comes from, in one form for every check.
 *
 * <p>A demand is the user's or the maker's, then its path in the house file is the source; or it was published, then its
 * title is; or neither, and then we say so.
 */
public final class Source {
    /** Custom that nobody publishes; only to be used with what the custom is. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    private Source() {}

    /** A value typed in the house file. */
    public static String file(String path) {
        return "house file: " + path;
    }

    /** A value the maker of the thing prints, typed in the house file. */
    public static String maker(String path) {
        return "maker's, house file: " + path;
    }

    /** A published rule. */
    public static String published(String title) {
        return "published: " + title;
    }

    /** A published rule we had no copy of at hand. */
    public static String fromMemory(String title) {
        return "from memory: " + title;
    }

    /** What follows from the thing itself, as that two solid things can't share room. */
    public static String reason(String why) {
        return "plain reason: " + why;
    }
}
