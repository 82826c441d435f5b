package org.spile.analysis.fit;

import java.util.List;

/** One question of fit, asked in one stance. A new one is a class that implements this and a line in {@link FitChecks}. */
interface FitCheck {
    /** Dotted name, as {@code fit.clearance}. */
    String name();

    /**
     * Its answers in a stance, in a fixed order. It may pass over pairs of parts, and places, that the site says haven't
     * changed: answers about them are taken over.
     */
    List<Answer> answers(Site site);

    /**
     * What it says of things that nothing was said of yet.
     *
     * @param answers all that was said
     */
    default List<Answer> otherwise(Site site, List<Answer> answers) {
        return List.of();
    }

    /**
     * What it keeps a unit away from wherever the unit goes, with the same exemptions as its answers; nothing for a question
     * that isn't about where a unit stands.
     *
     * @param unit path of the unit
     */
    default List<Ban> bans(Site site, String unit) {
        return List.of();
    }
}
