package org.spile.analysis.fit;

import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.CavitySpace;

/** What a cavity's linings leave of its depth at its shallowest spot: if nothing, they don't go in. */
final class CavityDepth implements FitCheck {
    private static final Demand SOME = new Demand(0, 0, Source.reason("linings can't share room"), Optional.empty());

    @Override
    public String name() {
        return "fit.depth";
    }

    @Override
    public List<Answer> answers(Site site) {
        return site.scene().cavities().stream()
                .filter(cavity -> site.asksOver(Plan.bounds(cavity.outline())))
                .map(cavity -> answer(site, cavity))
                .toList();
    }

    private Answer answer(Site site, CavitySpace cavity) {
        CavitySpace.Depth depth = cavity.leastDepth(cavity.outline());
        Outcome outcome = Outcome.of(depth.stack(), SOME);
        String head = outcome.lowMm() >= 0
                ? cavity.title() + " is " + Mm.text(outcome.lowMm()) + " deep between its linings at its shallowest"
                : "the linings of " + cavity.title() + " overlap by " + Mm.shortBy(outcome.lowMm());
        return Answer.of(
                Question.of(name(), cavity.path(), site.stance()),
                new Ends(depth.low(), depth.high()),
                outcome,
                head,
                Plan.bounds(cavity.outline()));
    }
}
