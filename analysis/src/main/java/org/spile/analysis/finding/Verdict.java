package org.spile.analysis.finding;

/** What came of a check, worst first. */
public enum Verdict {
    /** Not even as drawn. */
    FAILS("fails"),
    /** Passes as drawn, but not with its tolerances stacked. */
    TIGHT("tight"),
    /** A value is missing, or the answer lies between bounds. */
    NOT_KNOWN("not known"),
    /** Passes with everything against it. */
    PASSES("passes");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word shown to people and in JSON. */
    public String word() {
        return word;
    }
}
