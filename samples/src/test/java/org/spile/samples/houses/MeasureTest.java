package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.whole.Checks;
import org.spile.analysis.whole.Tape;
import org.spile.analysis.whole.TapeRow;
import org.spile.analysis.whole.TapeSheet;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;

/** What is to be measured in the samples, where, and what comes of it. */
class MeasureTest {
    private static final double EXACT = 1e-6;
    private static final String BELOW = "fit.maker/units.cooler.clearance.bottom";

    static List<Sample> samples() {
        return Sample.all().toList();
    }

    /**
     * The loft has 262 from ceiling face to bare roof, 25 of it insulation; the cooler hangs 46 below the roof and is 200
     * high. Below it are 262 - 46 - 200 = 16 where 15 are asked, above it 46 - 25 = 21 where 20 are: either margin of 1 is
     * shared by three readings, and by two.
     */
    @Test
    void loft_byHand() {
        TapeSheet sheet = sheet(Sample.named("loft").house());
        assertEquals(
                List.of(
                        "cavities.loft.high",
                        "units.cooler.high",
                        "units.cooler.at.top",
                        "cavities.loft.top.linings[1].pir"),
                sheet.rows().stream().map(TapeRow::path).toList());
        assertEquals(
                List.of(1, 3, 2, 4), sheet.rows().stream().map(TapeRow::rank).toList());
        assertTape(sheet.rows().get(0), 0, 262);
        assertTape(sheet.rows().get(1), 216, 16);
        assertTape(sheet.rows().get(2), 262, 216);
        assertTape(sheet.rows().get(3), 262, 237);
        assertEquals(1.0 / 3, sheet.rows().get(0).needed().orElseThrow(), EXACT);
        assertEquals(0.5, sheet.rows().get(3).needed().orElseThrow(), EXACT);
        assertEquals(0, sheet.left());
    }

    /** Each value typed as it was measured changes what is found, and a sheet with all of them measured well asks no more. */
    @Test
    void loft_measuredValuesCount() {
        Sample loft = Sample.named("loft");
        assertEquals(
                Verdict.FAILS,
                finding(loft.findings("cavities.loft.high=260 ± 0.3 measured")).verdict());
        assertEquals(
                Verdict.TIGHT,
                finding(loft.findings("cavities.loft.high=262 ± 2 measured")).verdict());
        assertEquals(
                Verdict.PASSES,
                finding(loft.findings("cavities.loft.high=264 ± 2 measured")).verdict());
        House measured = loft.house(
                "cavities.loft.high=262 ± 0.3 measured",
                "units.cooler.high=200 ± 0.3 measured",
                "units.cooler.at.top=46 ± 0.3 measured",
                "cavities.loft.top.linings[1].pir=25 ± 0.3 measured");
        assertEquals(List.of(), sheet(measured).rows());
    }

    /** 1955 in place of 1962 gives the cooler 7 mm more air: 1 mm of margin, of which 8.5 mm may be wrong. */
    @Test
    void saltmarsh_aMeasuredCeilingTurnsTheWorstFinding() {
        Sample saltmarsh = Sample.named("saltmarsh");
        Finding before = finding(saltmarsh.findings());
        Finding after = finding(saltmarsh.findings("cavities.lobby-top.ceiling.at=1955 ± 1 measured"));
        assertEquals(Verdict.FAILS, before.verdict());
        assertEquals(Verdict.TIGHT, after.verdict());
        assertEquals(1, after.margin().orElseThrow().number(), EXACT);
        assertEquals(-7.5, after.worst().orElseThrow().number(), EXACT);
    }

    /** The sheet decides what doesn't pass before what does, and fits one page. */
    @Test
    void saltmarsh_worstFirst() {
        TapeSheet sheet = sheet(Sample.named("saltmarsh").house());
        assertTrue(sheet.rows().size() <= TapeSheet.ROOM);
        assertTrue(sheet.decided().stream().anyMatch(finding -> finding.id().equals(BELOW)));
        assertTrue(sheet.decided().stream().allMatch(finding -> finding.verdict() != Verdict.PASSES));
        var paths = sheet.rows().stream().map(TapeRow::path).toList();
        assertTrue(
                paths.containsAll(List.of("cavities.lobby-top.ceiling.at", "units.cooler.at.top")), paths.toString());
    }

    /** What a row's finding loses or gains by a hundredth more of its reading is what its factor says. */
    @ParameterizedTest
    @MethodSource("samples")
    void sensitivityIsTheMarginsOwn(Sample sample) {
        House house = sample.house();
        for (TapeRow row : sheet(house).rows()) {
            for (TapeRow.Decides each : row.decides()) {
                double more = row.layer().size().number() + 0.01;
                if (house.with(Map.of(row.path(), more)) instanceof Resolved.Sound grown) {
                    double now = margin(Checks.standing(grown.house(), List.of("fit")), each.finding());
                    double factor = (now - each.finding().margin().orElseThrow().number()) / 0.01;
                    double told = each.finding().stack().stream()
                            .filter(layer -> layer.label().equals(row.path()))
                            .findFirst()
                            .orElseThrow()
                            .factor();
                    assertEquals(
                            told,
                            factor,
                            2e-3,
                            row.path() + " in " + each.finding().id());
                }
            }
        }
    }

    /** Numbers run on in walking order, floor to ceiling at each stop, and ranks are each given once. */
    @ParameterizedTest
    @MethodSource("samples")
    void walkingOrder(Sample sample) {
        TapeSheet sheet = sheet(sample.house());
        List<Integer> numbers = sheet.rows().stream().map(TapeRow::number).toList();
        List<Integer> ranks = sheet.rows().stream().map(TapeRow::rank).sorted().toList();
        List<Integer> counted = new ArrayList<>();
        for (int i = 1; i <= numbers.size(); i++) {
            counted.add(i);
        }
        assertEquals(counted, numbers);
        assertEquals(counted, ranks);
        assertEquals(
                numbers.size(),
                new LinkedHashSet<>(sheet.rows().stream().map(TapeRow::path).toList()).size());
        for (var stop : sheet.stops()) {
            double last = Double.NEGATIVE_INFINITY;
            for (TapeRow row : stop.rows()) {
                double height = row.tape().map(MeasureTest::lowest).orElse(0.0);
                assertTrue(height >= last - EXACT, stop.title() + " " + row.path());
                last = height;
            }
        }
    }

    /** A tape whose two ends are known is as long as the value says. */
    @ParameterizedTest
    @MethodSource("samples")
    void tapesAreAsLongAsTheirValue(Sample sample) {
        for (TapeRow row : sheet(sample.house()).rows()) {
            row.tape()
                    .filter(Tape::whole)
                    .ifPresent(tape -> assertEquals(
                            Math.abs(row.layer().size().number()), tape.from().distance(tape.to()), 1e-6, row.path()));
        }
    }

    private static void assertTape(TapeRow row, double from, double to) {
        Tape tape = row.tape().orElseThrow();
        assertEquals(from, tape.from().getZ(), EXACT, row.path());
        assertEquals(to, tape.to().getZ(), EXACT, row.path());
        Vector3D flat = tape.to().subtract(tape.from());
        assertEquals(Math.abs(to - from), flat.norm(), EXACT, row.path());
    }

    private static double lowest(Tape tape) {
        return Math.min(tape.from().getZ(), tape.to().getZ());
    }

    private static double margin(Findings findings, Finding like) {
        return findings.all().stream()
                .filter(finding -> finding.id().equals(like.id()))
                .findFirst()
                .orElseThrow()
                .margin()
                .orElseThrow()
                .number();
    }

    private static TapeSheet sheet(House house) {
        return TapeSheet.of(house, Checks.standing(house, Checks.names()).all(), TapeSheet.ROOM);
    }

    private static Finding finding(Findings findings) {
        return findings.all().stream()
                .filter(each -> each.id().equals(BELOW))
                .findFirst()
                .orElseThrow();
    }
}
