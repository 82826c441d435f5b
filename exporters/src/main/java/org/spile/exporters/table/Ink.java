package org.spile.exporters.table;

import org.spile.analysis.finding.Verdict;

/** How words are set off on a screen; the words themselves say everything. */
public enum Ink {
    /** Letters only. */
    PLAIN,
    /** Colours and bold by the control sequences of ECMA-48. */
    COLOUR;

    private static final String ESCAPE = "\u001b[";

    String heading(Verdict verdict, String words) {
        return switch (verdict) {
            case FAILS -> set("1;31", words);
            case TIGHT -> set("1;33", words);
            case NOT_KNOWN -> set("1;36", words);
            case PASSES -> set("1;32", words);
        };
    }

    String strong(String words) {
        return set("1", words);
    }

    private String set(String code, String words) {
        return this == PLAIN ? words : ESCAPE + code + "m" + words + ESCAPE + "0m";
    }
}
