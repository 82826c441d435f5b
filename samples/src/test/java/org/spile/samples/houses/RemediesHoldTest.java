package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;

/** Every remedy that is offered, put into the house file word for word, makes its finding pass and no other fail. */
class RemediesHoldTest {
    static List<Sample> samples() {
        return Sample.all().toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void remedies_doWhatTheySay(Sample sample) {
        Findings before = sample.findings();
        for (Finding finding : before.all()) {
            for (Remedy remedy : finding.remedies()) {
                if (!remedy.set().isEmpty()) {
                    Findings after = sample.findings(remedy.set().toArray(String[]::new));
                    assertEquals(Verdict.PASSES, verdict(after, finding.id()), remedy.says());
                    assertTrue(failing(before).containsAll(failing(after)), remedy.says());
                }
            }
        }
    }

    private static Verdict verdict(Findings findings, String id) {
        return findings.all().stream()
                .filter(finding -> finding.id().equals(id))
                .map(Finding::verdict)
                .findFirst()
                .orElse(Verdict.PASSES);
    }

    private static Set<String> failing(Findings findings) {
        Set<String> ids = new TreeSet<>();
        for (Finding finding : findings.all()) {
            if (finding.verdict() == Verdict.FAILS) {
                ids.add(finding.id());
            }
        }
        return ids;
    }
}
