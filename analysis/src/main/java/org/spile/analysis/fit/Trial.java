package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.kernel.measure.Reading;

/** Tries changes on a house: works it out again with another value, asks again what may have changed, and compares. */
final class Trial {
    private final House house;
    private final List<Sweep> sweeps;
    private final Map<String, Finding> was;
    private final Map<String, Optional<Findings>> tried = new HashMap<>();
    private final Map<String, Double> tooMuch = new HashMap<>();

    /**
     * Sets up trials of a house.
     *
     * @param sweeps all its answers, stance by stance
     * @param before its findings, one for each question
     */
    Trial(House house, List<Sweep> sweeps, Findings before) {
        this.house = house;
        this.sweeps = List.copyOf(sweeps);
        this.was = byId(before);
    }

    /** What another value of a reading would do; empty if the house wouldn't add up any more. */
    Optional<Effect> of(Reading reading, double value, String id) {
        return tried.computeIfAbsent(reading.path() + "=" + value, edit -> findings(reading, value))
                .map(after -> effect(after, id));
    }

    /** A reading that can't change by so much isn't changed by more: the house that doesn't add up is dear to find out. */
    private Optional<Findings> findings(Reading reading, double value) {
        double change = value - reading.value();
        String way = reading.path() + (change < 0 ? " less" : " more");
        if (Math.abs(change) >= tooMuch.getOrDefault(way, Double.POSITIVE_INFINITY)) {
            return Optional.empty();
        }
        if (house.with(Map.of(reading.path(), value)) instanceof Resolved.Sound sound) {
            return Optional.of(Findings.of(findings(sound.house())));
        }
        tooMuch.put(way, Math.abs(change));
        return Optional.empty();
    }

    /** What the first stance tells after the change, and what each stance told before it, needn't be asked again. */
    private List<Finding> findings(House changed) {
        List<Finding> findings = new ArrayList<>();
        List<Sweep> first = new ArrayList<>();
        for (Sweep before : sweeps) {
            List<Sweep> known = new ArrayList<>(first);
            known.add(before);
            Sweep after = Sweep.near(Site.of(changed, before.site().stance()), known);
            if (first.isEmpty()) {
                first.add(after);
            }
            findings.addAll(after.findings());
        }
        return findings;
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
        Verdict old =
                Optional.ofNullable(was.get(finding.id())).map(Finding::verdict).orElse(Verdict.PASSES);
        boolean worse = finding.verdict().compareTo(old) < 0;
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
