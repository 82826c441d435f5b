package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;

/** What moves in Saltmarsh: the rolling deck over its rails, the drawer behind its flap, the lab on its way to the dock. */
class RollingDeckTest {
    /**
     * The deck rolls 160 ± 2 above the roof, on rails 150 ± 1 high that start at the roof: 10 left, 5 asked, 3 eaten. A rail
     * 3 higher leaves 2 and no more at worst; one 6 higher leaves less than nothing.
     */
    @ParameterizedTest
    @CsvSource({"0, PASSES, 5, 2", "3, TIGHT, 2, -1", "6, FAILS, -1, -4"})
    void railMovedByMillimetres_turnsTheVerdict(double up, Verdict verdict, double margin, double worst) {
        Finding way = finding("travel.mover/movers.shade", "fixtures.deck-rail-left.at.roof=" + up);
        assertEquals(verdict, way.verdict(), way.because());
        assertEquals(margin, way.margin().orElseThrow().number(), 1e-6);
        assertEquals(worst, way.worst().orElseThrow().number(), 1e-6);
        assertEquals("mm", way.where().orElseThrow().position().unit());
    }

    @Test
    void drawer_comesOutOnceItsFlapIsOpen() {
        Finding way = finding("travel.mover/movers.drawer");
        assertEquals(Verdict.PASSES, way.verdict());
        assertTrue(way.because().contains("flap have moved"), way.because());
        assertEquals(8, way.value().orElseThrow().number(), 1e-6);
    }

    @Test
    void lab_comesToItsDock() {
        Finding way = finding("travel.dock/trailers.lab.dock");
        assertEquals(Verdict.PASSES, way.verdict());
        assertEquals(60, way.value().orElseThrow().number(), 1e-3);
        assertEquals(0, way.where().orElseThrow().position().number(), 1e-3);
    }

    private static Finding finding(String id, String... edits) {
        return Sample.named("saltmarsh").findings(edits).all().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
