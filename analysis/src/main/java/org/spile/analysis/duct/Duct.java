package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctRun;

/**
 * What each run is worth that says which round pipe it stands in for, or how much it should carry: held against that pipe by
 * friction per metre at its narrowest, not by area.
 */
public final class Duct implements Check {
    /** Against the pipe it stands in for. */
    static final String REPLACES = "duct.replaces";

    /** By itself, where no pipe is told. */
    static final String AREA = "duct.area";

    private final Function<House, List<Finding>> others;

    /**
     * All questions of ducts.
     *
     * @param others the answers that a remedy here must not spoil, as whether everything fits
     */
    public Duct(Function<House, List<Finding>> others) {
        this.others = others;
    }

    @Override
    public String name() {
        return "duct";
    }

    @Override
    public List<String> names() {
        return List.of(REPLACES, AREA);
    }

    @Override
    public List<Finding> findings(House house) {
        return findings(house, true);
    }

    @Override
    public List<Finding> withoutRemedies(House house) {
        return findings(house, false);
    }

    private List<Finding> findings(House house, boolean remedies) {
        List<Finding> findings = new ArrayList<>();
        for (DuctRun run : house.runs()) {
            if (run.replacesMm().isPresent() || run.flowM3s().isPresent()) {
                findings.add(finding(house, run, remedies));
            }
        }
        return findings;
    }

    private Finding finding(House house, DuctRun run, boolean remedies) {
        String check = run.replacesMm().isPresent() ? REPLACES : AREA;
        var duct = RunDuct.of(house, run);
        if (duct.result().isEmpty()) {
            return Finding.open(
                    check, run.path(), Optional.empty(), duct.because().orElseThrow());
        }
        RunWords words = new RunWords(duct.result().get());
        if (run.replacesMm().isEmpty()) {
            return Finding.open(check, run.path(), Optional.of(run.path() + ".replaces"), words.withoutPipe());
        }
        if (run.flowM3s().isEmpty()) {
            return Finding.open(check, run.path(), Optional.of(run.path() + ".flow"), words.withoutFlow());
        }
        RunDuct known = duct.result().get();
        var compared = known.compared();
        var worst = known.worst();
        if (compared.result().isEmpty() || worst.result().isEmpty()) {
            return Finding.open(
                    check,
                    run.path(),
                    Optional.empty(),
                    compared.because().or(worst::because).orElseThrow());
        }
        Finding finding = words.against(
                house,
                compared.result().get(),
                worst.result().get(),
                known.verdict().result().orElseThrow());
        return finding.verdict() == Verdict.PASSES || !remedies
                ? finding
                : finding.with(new WidthRemedy(house, known, compared.result().get(), others).remedies());
    }
}
