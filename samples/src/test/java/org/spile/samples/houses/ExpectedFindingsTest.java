package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.kernel.measure.Written;

/**
 * What is found in each sample is what was reviewed: {@code expected.txt} beside its house file. Run with {@code
 * -Dspile.renew=true} to write the files anew, then read the difference before you keep it.
 */
class ExpectedFindingsTest {
    static List<Sample> samples() {
        return Sample.all().toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void findings_areThoseThatWereReviewed(Sample sample) throws IOException {
        Path expected = sample.folder().resolve("expected.txt");
        String found = table(sample.findings());
        if (Boolean.getBoolean("spile.renew")) {
            Files.writeString(expected, found);
        }
        assertEquals(Files.readString(expected), found);
    }

    @Test
    void saltmarsh_fitFailsByOneGapOnly_andItsRemedyCuresIt() {
        Sample sample = Sample.named("saltmarsh");
        List<Finding> failing = failing(sample.findings());

        assertEquals(1, failing.size(), failing.toString());
        Finding gap = failing.get(0);
        assertEquals("units.cooler", gap.subject());
        // From the bare roof down: 2244 - 48 - 200 = 1996; the ceiling's face at 1962 carries 19 + 6: 1987. 9 of 15.
        assertEquals(9, gap.value().orElseThrow().number(), 1e-6);
        assertEquals(-6, gap.margin().orElseThrow().number(), 1e-6);
        // Against it: roof 3, hanging 2, body 1, ceiling 3, batten 1, ply 0.5: 10.5 more.
        assertEquals(-16.5, gap.worst().orElseThrow().number(), 1e-6);

        assertEquals(
                List.of("cavities.lobby-top.ceiling.drop=16.5"),
                gap.remedies().get(0).set());
        assertEquals(List.of(), failing(sample.findings("cavities.lobby-top.ceiling.drop=16.5")));
        assertEquals(
                1,
                failing(sample.findings("cavities.lobby-top.ceiling.drop=5.9")).size());
        assertEquals(Verdict.TIGHT, verdict(sample, gap, "16.4"));
        assertEquals(Verdict.PASSES, verdict(sample, gap, "16.5"));
    }

    private static Verdict verdict(Sample sample, Finding gap, String drop) {
        Findings findings = sample.findings("cavities.lobby-top.ceiling.drop=" + drop);
        return findings.all().stream()
                .filter(each -> each.id().equals(gap.id()))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    @Test
    void ids_areGivenOnce() {
        samples().forEach(sample -> {
            List<String> ids = sample.findings().all().stream().map(Finding::id).toList();
            assertEquals(ids.size(), ids.stream().distinct().count(), sample.toString());
            assertFalse(ids.isEmpty());
            assertTrue(ids.stream().noneMatch(String::isBlank));
        });
    }

    private static List<Finding> failing(Findings findings) {
        return findings.only("fit").all().stream()
                .filter(each -> each.verdict() == Verdict.FAILS)
                .toList();
    }

    /** One line a finding, by id: verdict, found, asked, margin, worst. */
    private static String table(Findings findings) {
        var lines = new TreeMap<String, String>();
        for (Finding finding : findings.all()) {
            lines.put(
                    finding.id(),
                    String.join(
                            " | ",
                            finding.id(),
                            finding.verdict().word(),
                            "found " + says(finding.value()),
                            "asked " + says(finding.required()),
                            "margin " + says(finding.margin()),
                            "worst " + says(finding.worst())));
        }
        return String.join("\n", lines.values()) + "\n";
    }

    private static String says(Optional<Quantity> quantity) {
        return quantity.map(each -> Written.number(each.number(), 2) + " " + each.unit())
                .orElse("-");
    }
}
