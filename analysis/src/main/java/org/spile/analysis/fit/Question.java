package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.analysis.finding.Finding;

/**
 * What is asked in one stance.
 *
 * @param id the same for the same question in every stance; of the answers to it only the worst stands
 * @param check dotted name
 * @param subject path of the thing asked about
 * @param against path of what it is held against
 * @param stance where it is asked
 */
record Question(String id, String check, String subject, Optional<String> against, String stance) {
    /** About a thing, held against another. */
    static Question of(String check, String subject, String against, String stance) {
        String id = Finding.idOf(check, subject, Optional.of(against));
        return new Question(id, check, subject, Optional.of(against), stance);
    }

    /** About a thing by itself. */
    static Question of(String check, String subject, String stance) {
        String id = Finding.idOf(check, subject, Optional.empty());
        return new Question(id, check, subject, Optional.empty(), stance);
    }

    /**
     * The same question about a detail of the subject, as {@code fit.maker/units.cooler.clearance.top}: whatever lies
     * nearest there answers it.
     */
    Question about(String detailPath) {
        return new Question(Finding.idOf(check, detailPath, Optional.empty()), check, subject, against, stance);
    }

    /** The same in another stance. */
    Question in(String otherStance) {
        return new Question(id, check, subject, against, otherStance);
    }
}
