package org.spile.analysis.fit;

import java.util.List;

/** One question of fit, asked in one stance. A new one is a class that implements this and a line in {@link FitChecks}. */
interface FitCheck {
    /** Dotted name, as {@code fit.clearance}. */
    String name();

    /** Its answers in a stance, in a fixed order. */
    List<Answer> answers(Site site);
}
