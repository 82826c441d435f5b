package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;

/** The findings of a house by id, and what a worked example expects of one. */
final class Asked {
    private static final double EXACT = 1e-6;

    private final Map<String, Finding> byId = new LinkedHashMap<>();

    static Asked of(House house) {
        Asked asked = new Asked();
        for (Finding finding : new Fit().findings(house)) {
            asked.byId.put(finding.id(), finding);
        }
        return asked;
    }

    Finding finding(String id) {
        Finding finding = byId.get(id);
        if (finding == null) {
            throw new AssertionError("no finding " + id + " among " + byId.keySet());
        }
        return finding;
    }

    List<Finding> failing() {
        return byId.values().stream()
                .filter(finding -> finding.verdict() == Verdict.FAILS)
                .toList();
    }

    Map<String, Finding> all() {
        return byId;
    }

    /** Checks a finding against figures worked by hand. */
    Finding expect(String id, double found, double asked, double worst, Verdict verdict) {
        Finding finding = finding(id);
        assertEquals(found, mm(finding.value()), EXACT, id);
        assertEquals(asked, mm(finding.required()), EXACT, id);
        assertEquals(found - asked, mm(finding.margin()), EXACT, id);
        assertEquals(worst, mm(finding.worst()), EXACT, id);
        assertEquals(verdict, finding.verdict(), id + ": " + finding.because());
        return finding;
    }

    private static double mm(java.util.Optional<Quantity> quantity) {
        return quantity.orElseThrow().number();
    }
}
