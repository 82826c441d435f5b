package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.duct.Duct;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.fit.Fit;
import org.spile.analysis.fit.OnTheWay;
import org.spile.analysis.fit.Road;
import org.spile.geometry.house.House;

/** Every check there is, in the order in which their answers are shown. */
public final class Checks {
    private Checks() {}

    /** All of them. */
    public static List<Check> all() {
        List<Check> all = new ArrayList<>();
        all.add(new Fit());
        all.add(new OnTheWay());
        all.add(new Road());
        all.add(new Duct(Fit::standing));
        all.addAll(Unanswered.questions());
        return List.copyOf(all);
    }

    /** Every answer to a house, in every stance. */
    public static Findings answer(House house) {
        return answered(house, all());
    }

    /**
     * The answers to some questions only; others aren't worked out.
     *
     * @param asked names of checks or questions, as {@code fit} or {@code fit.clearance}
     */
    public static Findings answer(House house, List<String> asked) {
        return wanted(answered(house, needed(asked)), asked);
    }

    /** As {@link #answer(House, List)}, without seeking remedies: for whoever asks many houses. */
    public static Findings standing(House house, List<String> asked) {
        List<Finding> found = new ArrayList<>();
        needed(asked).forEach(check -> found.addAll(check.withoutRemedies(house)));
        return wanted(Findings.of(found), asked);
    }

    /** Every name that {@link #answer(House, List)} takes: each check's and its questions'. */
    public static List<String> names() {
        List<String> names = new ArrayList<>();
        for (Check check : all()) {
            names.addAll(check.names());
        }
        return List.copyOf(names);
    }

    /** One check may answer several names below its own, as {@code fit} does. */
    private static boolean concerns(String asked, Check check) {
        return check.names().stream().anyMatch(name -> Findings.isOf(asked, name));
    }

    private static List<Check> needed(List<String> asked) {
        return all().stream()
                .filter(check -> asked.stream().anyMatch(name -> concerns(name, check)))
                .toList();
    }

    private static Findings wanted(Findings findings, List<String> asked) {
        return Findings.of(findings.all().stream()
                .filter(finding -> asked.stream().anyMatch(name -> Findings.isOf(name, finding.check())))
                .toList());
    }

    private static Findings answered(House house, List<Check> checks) {
        List<Finding> found = new ArrayList<>();
        checks.forEach(check -> found.addAll(check.findings(house)));
        return Findings.of(found);
    }
}
