package org.spile.analysis.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;

/** Tries changes on a house: works it out again with another value, asks every question of fit again, and compares. */
final class Trial {
    private final House house;
    private final Map<String, Finding> before;

    /**
     * Sets up trials of a house.
     *
     * @param before all its fit findings, one for each question
     */
    Trial(House house, Findings before) {
        this.house = house;
        this.before = byId(before);
    }

    /** The house's own findings, by id. */
    Map<String, Finding> before() {
        return before;
    }

    /** What a change would do; empty if the house wouldn't add up any more. */
    Optional<Effect> of(String path, double value, String id) {
        return house.with(Map.of(path, value)) instanceof Resolved.Sound sound
                ? Optional.of(effect(Findings.of(findings(sound.house())), id))
                : Optional.empty();
    }

    static List<Finding> findings(House house) {
        return FitChecks.answers(house).stream().map(Answer::finding).toList();
    }

    private Effect effect(Findings after, String id) {
        Map<String, Finding> now = byId(after);
        List<Finding> spoilt = after.worstFirst().stream()
                .filter(finding -> !finding.id().equals(id) && spoilt(finding))
                .toList();
        return new Effect(Optional.ofNullable(now.get(id)), spoilt);
    }

    /** Worse than before and no longer good: it fails now, or its headroom, which nobody may eat into, isn't sure any more. */
    private boolean spoilt(Finding finding) {
        Verdict was = Optional.ofNullable(before.get(finding.id()))
                .map(Finding::verdict)
                .orElse(Verdict.PASSES);
        boolean worse = finding.verdict().compareTo(was) < 0;
        boolean counts = finding.verdict() == Verdict.FAILS
                || finding.check().equals("fit.headroom")
                || finding.check().equals("fit.maker");
        return worse && counts;
    }

    private static Map<String, Finding> byId(Findings findings) {
        Map<String, Finding> byId = new LinkedHashMap<>();
        findings.all().forEach(finding -> byId.put(finding.id(), finding));
        return byId;
    }

    /**
     * What a change did.
     *
     * @param finding the answer it was for, as it is now; empty if the two are too far apart now to be told
     * @param spoilt what got worse by it, worst first
     */
    record Effect(Optional<Finding> finding, List<Finding> spoilt) {
        /** Whether the answer now passes. */
        boolean cures() {
            return finding.isEmpty() || finding.get().verdict() == Verdict.PASSES;
        }

        /** By how much it is still short, in mm with everything against it. */
        double shortMm() {
            return finding.flatMap(Finding::worst).map(worst -> -worst.number()).orElse(0.0);
        }
    }
}
