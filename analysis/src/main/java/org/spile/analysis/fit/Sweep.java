package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.analysis.finding.Finding;

/**
 * Every answer of fit in one stance.
 *
 * <p>A sweep can follow another one, of another stance or of the same house with a value changed: then only what changed is
 * measured again, and the other answers are taken over.
 *
 * @param site where it was asked
 * @param answers each thing's with everything near it; of those to one question the worst will stand
 */
record Sweep(Site site, List<Answer> answers) {
    Sweep {
        answers = List.copyOf(answers);
    }

    /**
     * Asks everything that isn't known already, and what is nearest to things that have nothing near.
     *
     * @param known other sweeps; for things that stand in one of them as they stand here, it answers
     */
    static Sweep of(Site site, List<Sweep> known) {
        Sweep near = near(site, known);
        List<Answer> all = new ArrayList<>(near.answers);
        for (FitCheck check : FitChecks.all()) {
            all.addAll(check.otherwise(near.site, near.answers));
        }
        return new Sweep(near.site, all);
    }

    /** As {@link #of}, but without what is nearest to things that have nothing near: they pass anyway. */
    static Sweep near(Site site, List<Sweep> known) {
        Site narrowed = site;
        List<Answer> answers = new ArrayList<>();
        for (Sweep other : known) {
            Changes changes = Changes.between(
                    other.site.scene(),
                    site.scene(),
                    site.house().told().limits().sways().isPresent());
            narrowed = narrowed.narrowed(changes);
            for (Answer answer : other.answers) {
                if (answer.holdsAfter(changes)) {
                    answers.add(answer.in(site.stance()));
                }
            }
        }
        for (FitCheck check : FitChecks.all()) {
            answers.addAll(check.answers(narrowed));
        }
        return new Sweep(narrowed, answers);
    }

    /** The worst answer to each question. */
    List<Answer> standing() {
        Map<String, Answer> worst = new LinkedHashMap<>();
        for (Answer answer : answers) {
            worst.merge(answer.id(), answer, (one, other) -> Worst.FIRST.compare(other, one) < 0 ? other : one);
        }
        return List.copyOf(worst.values());
    }

    List<Finding> findings() {
        return standing().stream().map(Answer::finding).toList();
    }
}
