package org.spile.analysis.whole;

import org.spile.analysis.finding.Layer;

/** How far a number of the house file can be trusted, the least trusted first: the order in which to measure. */
public enum Trust {
    /** A guess, or a default that stands in for what nobody said. */
    ASSUMED("assumed"),
    /** Said without saying how exact it is. */
    UNTOLERANCED("no tolerance"),
    /** Said with its tolerance, but not measured. */
    TOLERANCED("not measured"),
    /** From the maker's sheet. */
    MAKER("maker's"),
    /** Taken off the real thing. */
    MEASURED("measured");

    private final String words;

    Trust(String words) {
        this.words = words;
    }

    /** The words shown to people and in JSON. */
    public String words() {
        return words;
    }

    static Trust of(Layer layer) {
        return switch (layer.origin()) {
            case "measured" -> MEASURED;
            case "maker" -> MAKER;
            case "assumed", "default" -> ASSUMED;
            default -> layer.plus() == 0 && layer.minus() == 0 ? UNTOLERANCED : TOLERANCED;
        };
    }
}
