package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.analysis.finding.Finding;

/**
 * What is asked in one stance.
 *
 * @param id the same for the same question in every stance
 * @param check dotted name
 * @param subject path of the thing asked about
 * @param against path of what it is held against
 * @param stance where it is asked
 */
record Question(String id, String check, String subject, Optional<String> against, String stance) {
    /** About a thing, held against another. */
    static Question of(String check, String subject, String against, String stance) {
        return new Question(
                Finding.idOf(check, subject, Optional.of(against)), check, subject, Optional.of(against), stance);
    }

    /** About a thing by itself. */
    static Question of(String check, String subject, String stance) {
        return new Question(Finding.idOf(check, subject, Optional.empty()), check, subject, Optional.empty(), stance);
    }

    /** The same, told apart by a detail of the subject: {@code fit.maker/units.cooler.clearance.top/...}. */
    Question about(String detailPath) {
        return new Question(Finding.idOf(check, detailPath, against), check, subject, against, stance);
    }
}
