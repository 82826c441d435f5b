package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * Seeks the single changes of a house file that cure an answer, each the least that does, and tries every one before it is
 * offered.
 *
 * <p>For each reading of the answer's stack that its owner can choose, the least change follows from the stack; a ceiling's
 * drop follows from exit intervals ({@link LeastDrop}). The change is rounded to 0.1 mm on the safe side and tried on the
 * whole house; on slopes, where a stack is only the first-order term, the rest of the way is added and tried again. What
 * spoils something else isn't offered; a ceiling that can't drop that far says what stops it.
 */
final class FitRemedies {
    private static final double STEP = 10;
    private static final int TRIES = 4;
    private static final int OFFERED = 4;
    private static final int OFFERED_TIGHT = 2;

    private final Trial trial;
    private final Map<String, Site> sites = new HashMap<>();
    private final Map<String, Followers> followers = new HashMap<>();

    FitRemedies(Trial trial, List<Sweep> sweeps) {
        this.trial = trial;
        sweeps.forEach(sweep -> sites.put(sweep.site().stance(), sweep.site()));
    }

    /** What would cure an answer that fails or is tight; best first. What is only tight gets two, of different kinds. */
    List<Remedy> of(Answer answer) {
        Site site = sites.get(answer.question().stance());
        boolean fails = answer.outcome().verdict() == Verdict.FAILS;
        List<String> drops = site.scene().cavities().stream()
                .filter(CavitySpace::hasCeiling)
                .map(CavitySpace::dropPath)
                .toList();
        List<Remedy> remedies = new ArrayList<>();
        Set<Lever.Chooses> found = EnumSet.noneOf(Lever.Chooses.class);
        int most = fails ? OFFERED : OFFERED_TIGHT;
        for (Lever lever : Lever.of(answer.outcome().stack(), drops, bought(site))) {
            if (remedies.size() < most && (fails || !found.contains(lever.kind()))) {
                Optional<Remedy> remedy = remedy(site, answer, lever);
                remedy.ifPresent(remedies::add);
                remedy.ifPresent(one -> found.add(lever.kind()));
            }
        }
        return remedies;
    }

    /** What is neither sheet round a spigot nor of layers comes from a maker. */
    private static List<String> bought(Site site) {
        return site.house().told().units().values().stream()
                .filter(unit -> unit.joins().isEmpty() && unit.layers().isEmpty())
                .map(unit -> unit.placed().path())
                .toList();
    }

    private Optional<Remedy> remedy(Site site, Answer answer, Lever lever) {
        if (lever.kind() != Lever.Chooses.DROP || answer.pair().isEmpty()) {
            Outcome outcome = answer.outcome();
            double drawn = lever.changeFor(-outcome.marginMm());
            double worst = lever.changeFor(-outcome.worstMm());
            return tried(answer, lever, Change.by(lever, drawn, worst), Optional.empty());
        }
        Pair pair = answer.pair().get();
        Followers follow = followers.computeIfAbsent(
                site.stance() + " " + lever.reading().path(),
                key -> Followers.of(site, lever.reading().path()));
        return LeastDrop.of(follow, pair, answer.outcome().demand(), lever)
                .flatMap(drops ->
                        tried(answer, lever, Change.by(lever, drops.asDrawnMm(), drops.worstMm()), drops.stop()));
    }

    private Optional<Remedy> tried(Answer answer, Lever lever, Change start, Optional<Descent.Stop> stop) {
        Change change = start;
        for (int i = 0; i < TRIES && Sane.is(lever, change.value()); i++) {
            Optional<Trial.Effect> effect = trial.of(lever.reading(), change.value(), answer.id());
            if (effect.isEmpty()) {
                return Optional.empty();
            }
            if (effect.get().cures()) {
                return judged(lever, change, effect.get(), stop);
            }
            change = change.further(lever, effect.get().shortMm());
        }
        return Optional.empty();
    }

    /** Offered if nothing is spoilt; a ceiling says what stops it, anything else is passed over. */
    private static Optional<Remedy> judged(
            Lever lever, Change change, Trial.Effect effect, Optional<Descent.Stop> stop) {
        if (effect.spoilt().isEmpty()) {
            return Optional.of(RemedyWords.offered(lever, change));
        }
        if (lever.kind() != Lever.Chooses.DROP) {
            return Optional.empty();
        }
        return Optional.of(stop.map(met -> RemedyWords.stopped(lever, met))
                .orElseGet(
                        () -> RemedyWords.spoils(lever, change, effect.spoilt().get(0))));
    }

    /**
     * A change of one reading.
     *
     * @param asDrawn the value at which the answer would be tight; equal to the present one if it is already
     * @param value the value that cures it, rounded on the safe side
     */
    record Change(double asDrawn, double value) {
        static Change by(Lever lever, double drawnMm, double worstMm) {
            double now = lever.reading().value();
            double drawn = lever.factor() * drawnMm > GeometryTolerance.CONTACT_MM ? now + drawnMm : now;
            return new Change(safe(lever, drawn), safe(lever, now + worstMm));
        }

        Change further(Lever lever, double shortMm) {
            double more = lever.changeFor(Math.max(shortMm, 1 / STEP / 2));
            return new Change(asDrawn, safe(lever, value + more));
        }

        /** To 0.1 mm, towards more room; the contact tolerance keeps an exact tenth what it is. */
        private static double safe(Lever lever, double value) {
            double tenths = value * STEP;
            double slack = GeometryTolerance.CONTACT_MM * STEP;
            double rounded = lever.factor() > 0 ? Math.ceil(tenths - slack) : Math.floor(tenths + slack);
            return Double.parseDouble(Written.number(rounded / STEP, 1));
        }
    }
}
