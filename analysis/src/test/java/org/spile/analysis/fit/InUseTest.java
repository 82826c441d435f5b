package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;

/** What sags, grows and shifts in use eats margins and moves nothing that is drawn. */
class InUseTest {
    private static final double EXACT = 1e-6;

    private static final String LOFT = """
            cavities:
              loft:
                long: 2600
                wide: 1200
                high: 300
                ceiling: {linings: [{batten: 19 ± 0}]}
            fixtures:
              rail: {kind: rail, long: 2000, wide: 40, high: 40, at: {rear: 0, left: 300, top: 0}RAIL}
            units:
              cooler: {long: 500, wide: 400, high: 200, mass: 20 kg, at: {rear: 600, left: 500, top: 46}, hung-from: rail}
              box: {long: 100, wide: 40 mm, high: 40 mm, mass: 1 kg, at: {rear: 2020, left: 300, top: 0}}
            limits: {clearance: 10LIMITS}
            stances: {parked: {}, moving: {road: yes}}
            """;

    /** 300 - 19 - 46 - 200 = 35 between the cooler and the batten; typed, the rail's sag of 2 is all there is to lose. */
    @Test
    void typedSag_goesDownWithWhatHangs() {
        Finding gap = gap(", sag: 2", "");
        assertEquals(25, gap.margin().orElseThrow().number(), EXACT);
        assertEquals(23, gap.worst().orElseThrow().number(), EXACT);
        assertEquals("fixtures.rail.sag", movement(gap).label());
    }

    /**
     * A rail of softwood, 40 x 40 over 2000 free, E 11 000 MPa, I = 40^4 / 12 = 213 333 mm4: 20 kg hang in its middle, 196.133 N
     * x 2000^3 / (48 x 11 000 x 213 333) = 13.930; its own 500 kg/m3 are 0.0078453 N/mm, 5 w L^4 / (384 E I) = 0.697.
     */
    @Test
    void sagOfAFreeSpan_isReckoned() {
        Finding gap = gap(", of: timber, spans: 2000", "");
        assertEquals(25 - 13.9299 - 0.6965, gap.worst().orElseThrow().number(), 1e-3);
    }

    @Test
    void onTheRoad_unitsShift() {
        Finding gap = gap("", ", sways: 4");
        assertEquals(21, gap.worst().orElseThrow().number(), EXACT);
        assertEquals(List.of("moving"), gap.stance());
    }

    /** Batten 19, 4 % damper, 0.267 % each by the flooring page that quotes the Wood Handbook: 19 x 0.01068 = 0.2029. */
    @Test
    void wood_swells() {
        Finding gap = gap("", ", damps: 4 %");
        assertEquals(25 - 0.20292, gap.worst().orElseThrow().number(), EXACT);
    }

    /** Aluminium, 2000 mm, 50 K: 2.31 mm (23.1 millionths by the open encyclopaedia's table); 20 as drawn to the box. */
    @Test
    void metal_growsAlongItself() {
        Finding gap = find("fit.clearance/units.box/fixtures.rail", ", of: alu", ", warms: 50 K");
        assertEquals(10, gap.margin().orElseThrow().number(), EXACT);
        assertEquals(10 - 2.31, gap.worst().orElseThrow().number(), EXACT);
        assertEquals("fixtures.rail.long with heat", movement(gap).label());
    }

    private static Layer movement(Finding finding) {
        return finding.stack().stream()
                .filter(layer -> layer.takes() > 0)
                .findFirst()
                .orElseThrow();
    }

    private static Finding gap(String rail, String limits) {
        return find("fit.clearance/units.cooler/cavities.loft.ceiling", rail, limits);
    }

    private static Finding find(String id, String rail, String limits) {
        String text = LOFT.replace("RAIL", rail).replace("LIMITS", limits);
        HouseResult result = HouseFile.houseText("house.yaml", text, List.of(), List.of());
        House house = assertInstanceOf(HouseResult.Sound.class, result, result.toString())
                .house();
        List<Finding> findings = new Fit().findings(house);
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " isn't among "
                        + findings.stream().map(Finding::id).toList()));
    }
}
