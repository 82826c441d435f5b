package org.spile.analysis.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingsTest {

    @Test
    void worstComesFirstWithinAQuestion() {
        Findings findings = Findings.of(List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 1, 1),
                finding("fit.b", "x", "parked", Verdict.TIGHT, 9, -1),
                finding("fit.c", "x", "parked", Verdict.FAILS, -1, -2),
                finding("fit.d", "x", "parked", Verdict.TIGHT, 2, -7),
                Finding.open("fit.e", "x", Optional.of("masses"), "waits"),
                finding("fit.f", "x", "parked", Verdict.FAILS, -3, -3)));
        assertEquals(List.of("fit.f", "fit.c", "fit.d", "fit.b", "fit.e", "fit.a"), checks(findings));
    }

    @Test
    void questionsStandInTheOrderInWhichTheyWereAsked() {
        Findings findings = Findings.of(List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 1, 1),
                finding("air.flow", "x", "parked", Verdict.FAILS, -1, -1),
                finding("fit.b", "x", "parked", Verdict.FAILS, -1, -1)));
        assertEquals(List.of("fit.b", "fit.a", "air.flow"), checks(findings));
        assertEquals(List.of("fit", "air"), List.copyOf(findings.byQuestion().keySet()));
        assertEquals("air.flow", findings.worstFirst().get(0).check());
    }

    @Test
    void whatHoldsInSeveralStancesIsToldOnce() {
        Findings findings = Findings.of(List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 4, 2),
                finding("fit.a", "x", "shaded", Verdict.PASSES, 4.001, 2),
                finding("fit.a", "y", "parked", Verdict.PASSES, 4, 2)));
        assertEquals(2, findings.all().size());
        assertEquals(List.of("parked", "shaded"), findings.all().get(0).stance());
        assertEquals(4, findings.all().get(0).margin().orElseThrow().number());
    }

    @Test
    void theWorstStanceStands() {
        Findings findings = Findings.of(List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 4, 2),
                finding("fit.a", "x", "serviced", Verdict.TIGHT, 2, -1),
                finding("fit.a", "x", "on-the-road", Verdict.TIGHT, 2, -1)));
        assertEquals(1, findings.all().size());
        assertEquals(List.of("serviced", "on-the-road"), findings.all().get(0).stance());
        assertEquals(Verdict.TIGHT, findings.all().get(0).verdict());
    }

    @Test
    void orderDoesNotDependOnTheOrderGiven() {
        List<Finding> given = List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 1, 1),
                finding("fit.a", "y", "parked", Verdict.PASSES, 1, 1),
                finding("fit.b", "x", "parked", Verdict.FAILS, -1, -1));
        List<Finding> turned = List.of(given.get(2), given.get(1), given.get(0));
        assertEquals(Findings.of(given).all(), Findings.of(turned).all());
    }

    @Test
    void summaryCounts() {
        Findings findings = Findings.of(List.of(
                finding("fit.a", "x", "parked", Verdict.PASSES, 1, 1),
                finding("fit.b", "x", "parked", Verdict.TIGHT, 1, -1),
                finding("fit.c", "x", "parked", Verdict.FAILS, -1, -1),
                Finding.open("air", "runs", Optional.empty(), "waits")));
        assertEquals(new Summary(1, 1, 1, 1), findings.summary());
        assertEquals(
                "1 fails, 1 tight, 1 not known, 1 passes", findings.summary().says());
        assertTrue(findings.anyFails());
        assertFalse(findings.only("fit.a").anyFails());
    }

    @Test
    void onlyTakesANameOrItsFirstParts() {
        Findings findings = Findings.of(List.of(
                finding("fit.clear", "x", "parked", Verdict.PASSES, 1, 1),
                finding("fit.clearance", "x", "parked", Verdict.PASSES, 1, 1)));
        assertEquals(List.of("fit.clear"), checks(findings.only("fit.clear")));
        assertEquals(2, findings.only("fit").all().size());
        assertEquals(0, findings.only("fi").all().size());
    }

    @Test
    void notKnownIsGroupedByWhatWouldSettleIt() {
        Findings findings = Findings.of(List.of(
                Finding.open("tow.load", "trailers.lab", Optional.of("masses"), "waits"),
                Finding.open("air.flow", "runs.a", Optional.of("units.cooler.fan"), "waits"),
                Finding.open("air.flow", "runs.b", Optional.of("units.cooler.fan"), "waits"),
                Finding.open("heat", "rooms", Optional.empty(), "waits")));
        assertEquals(
                List.of("units.cooler.fan", "masses", ""),
                List.copyOf(findings.notKnownByMissing().keySet()));
        assertEquals(2, findings.notKnownByMissing().get("units.cooler.fan").size());
    }

    private static List<String> checks(Findings findings) {
        return findings.all().stream().map(Finding::check).toList();
    }

    private static Finding finding(
            String check, String subject, String stance, Verdict verdict, double margin, double worst) {
        return new Finding(
                Finding.idOf(check, subject, Optional.empty()),
                check,
                subject,
                Optional.empty(),
                List.of(stance),
                List.of(),
                verdict,
                Optional.of(Quantity.mm(10 + margin)),
                Optional.of(Quantity.mm(10)),
                Optional.of(Quantity.mm(margin)),
                Optional.of(Quantity.mm(worst)),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "because",
                List.of(),
                List.of(),
                "");
    }
}
