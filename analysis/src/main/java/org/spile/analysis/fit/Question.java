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
 * @param slot of the answers with this slot only the worst stands; the id, unless things compete to be the nearest
 * @param stance where it is asked
 */
record Question(String id, String check, String subject, Optional<String> against, String slot, String stance) {
    /** About a thing, held against another. */
    static Question of(String check, String subject, String against, String stance) {
        String id = Finding.idOf(check, subject, Optional.of(against));
        return new Question(id, check, subject, Optional.of(against), id, stance);
    }

    /** About a thing by itself. */
    static Question of(String check, String subject, String stance) {
        String id = Finding.idOf(check, subject, Optional.empty());
        return new Question(id, check, subject, Optional.empty(), id, stance);
    }

    /**
     * The same, told apart by a detail of the subject: {@code fit.maker/units.cooler.clearance.top/...}. Whatever it is held
     * against, only the worst stands.
     */
    Question about(String detailPath) {
        String slot = Finding.idOf(check, detailPath, Optional.empty());
        return new Question(Finding.idOf(check, detailPath, against), check, subject, against, slot, stance);
    }

    /** The same in another stance. */
    Question in(String otherStance) {
        return new Question(id, check, subject, against, slot, otherStance);
    }
}
