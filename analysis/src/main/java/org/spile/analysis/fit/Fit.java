package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;

/**
 * Will it go in: every question of fit, in every stance, with remedies for what fails or is tight.
 *
 * <p>All its questions are asked at once, because a remedy for one must not spoil another.
 */
public final class Fit implements Check {
    /** All questions of fit. */
    public Fit() {
        // Nothing to set up; stated because the package is exported.
    }

    @Override
    public String name() {
        return "fit";
    }

    @Override
    public List<String> names() {
        return FitChecks.all().stream().map(FitCheck::name).toList();
    }

    @Override
    public List<Finding> findings(House house) {
        List<Sweep> sweeps = sweeps(house);
        List<Answer> answers = new ArrayList<>();
        sweeps.forEach(sweep -> answers.addAll(sweep.standing()));
        Findings merged = Findings.of(answers.stream().map(Answer::finding).toList());
        FitRemedies remedies = new FitRemedies(new Trial(house, sweeps, merged), sweeps);
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : merged.all()) {
            boolean wanting = finding.verdict() == Verdict.FAILS || finding.verdict() == Verdict.TIGHT;
            findings.add(wanting ? finding.with(remedies.of(behind(finding, answers))) : finding);
        }
        return findings;
    }

    @Override
    public List<Finding> withoutRemedies(House house) {
        return standing(house);
    }

    /** Every answer as it stands, without seeking remedies: for whoever changes something else and must not spoil the fit. */
    public static List<Finding> standing(House house) {
        List<Finding> standing = new ArrayList<>();
        sweeps(house).forEach(sweep -> sweep.standing().forEach(answer -> standing.add(answer.finding())));
        return Findings.of(standing).all();
    }

    /** The first stance is asked everything; in the others most things stand as they stood. */
    private static List<Sweep> sweeps(House house) {
        List<Sweep> sweeps = new ArrayList<>();
        for (String stance : house.stances()) {
            List<Sweep> known = sweeps.isEmpty() ? List.of() : sweeps.subList(0, 1);
            sweeps.add(Sweep.of(Site.of(house, stance), known));
        }
        return sweeps;
    }

    /** The answer that a merged finding stands for. */
    private static Answer behind(Finding finding, List<Answer> answers) {
        return answers.stream()
                .filter(answer -> answer.finding()
                        .heldIn(finding.stance(), finding.situation())
                        .equals(finding))
                .findFirst()
                .orElseThrow();
    }
}
