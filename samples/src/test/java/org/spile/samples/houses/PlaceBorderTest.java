package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.fit.Fit;
import org.spile.analysis.place.Place;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.analysis.place.PlaceMap;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.kernel.planar.Outline;

/**
 * Borders of the maps against the checks themselves: the unit is moved in the house by 0.1 mm to either side of a border, and
 * the house is asked again. Inside nothing fails because of the unit, outside something does.
 */
class PlaceBorderTest {
    private static final double STEP_MM = 0.1;

    @Test
    void theLockersLimitsLeaveRoomAloneAndNoneTogether() {
        String filter = "units.cooler.service.filter.wide=410";
        var none = places(filter).empty().orElseThrow();
        assertTrue(none.onlyTogether(), none.limits().toString());
        var governing = none.governing().orElseThrow();
        assertEquals("fit.clearance/limits.clearance", governing.limit().id());
        double yieldMm = governing.yieldMm().orElseThrow();
        assertTrue(places(filter, "limits.clearance=" + (5 - yieldMm)).fits(), "yielding so much opens a place");
        assertTrue(!places(filter, "limits.clearance=" + (5 - yieldMm + 0.1)).fits(), "0.1 mm less doesn't");
    }

    private static PlaceAnswer places(String... edits) {
        return Place.of(Sample.named("boat-locker").house(edits), "cooler", List.of(0.0))
                .orElseThrow();
    }

    @Test
    void saltmarshsCooler() {
        Sample sample = Sample.named("saltmarsh");
        assertTrue(borders(sample.house("cavities.lobby-top.ceiling.drop=16.5"), "cooler", 60) >= 50);
    }

    @Test
    void theLoftsCooler() {
        borders(Sample.named("loft").house(), "cooler", 24);
    }

    @Test
    void theLockersCoolerUnderASlantedHull() {
        borders(Sample.named("boat-locker").house(), "cooler", 24);
    }

    /** Tries points all round each area at the unit's present yaw; how many there were. */
    private static int borders(House house, String unit, int wanted) {
        House free = house.freed(unit).orElseThrow().house();
        PlaceAnswer answer = Place.of(
                        house, unit, List.of(house.freed(unit).orElseThrow().yawDeg()))
                .orElseThrow();
        assertTrue(answer.fits(), "there is a place");
        int tried = 0;
        for (PlaceMap map : answer.maps()) {
            for (Outline area : map.free().areas()) {
                List<List<Vector2D>> rings = new ArrayList<>(area.holes());
                rings.add(area.shell());
                for (List<Vector2D> ring : rings) {
                    tried += round(free, unit, area, ring, wanted);
                }
            }
        }
        return tried;
    }

    private static int round(House free, String unit, Outline area, List<Vector2D> ring, int wanted) {
        int tried = 0;
        int aSide = Math.max(1, (wanted + ring.size() - 1) / ring.size());
        for (int i = 0; i < ring.size(); i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % ring.size());
            if (a.distance(b) < 4 * STEP_MM) {
                continue;
            }
            Vector2D way = b.subtract(a).normalize();
            Vector2D left = Vector2D.of(-way.getY(), way.getX()).multiply(STEP_MM);
            for (int k = 0; k < aSide; k++) {
                Vector2D at = a.lerp(b, (k + 0.5) / aSide);
                boolean inwards = area.contains(at.add(left.multiply(0.01)));
                Vector2D inside = inwards ? at.add(left) : at.subtract(left);
                Vector2D outside = inwards ? at.subtract(left) : at.add(left);
                assertEquals(List.of(), failing(free, unit, inside), "inside the border at " + at);
                assertTrue(!failing(free, unit, outside).isEmpty(), "outside the border at " + at);
                tried++;
            }
        }
        return tried;
    }

    /** What fails because of the unit, moved there. */
    private static List<String> failing(House free, String unit, Vector2D place) {
        String path = "units." + unit;
        Resolved moved = free.with(Map.of(path + ".at.x", place.getX(), path + ".at.y", place.getY()));
        List<String> failing = new ArrayList<>();
        for (Finding finding : Fit.standing(((Resolved.Sound) moved).house())) {
            boolean its = (finding.subject() + ".").startsWith(path + ".")
                    || finding.against()
                            .filter(against -> (against + ".").startsWith(path + "."))
                            .isPresent();
            if (its && finding.verdict() == Verdict.FAILS) {
                failing.add(finding.because());
            }
        }
        return failing;
    }
}
