package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;

class DuctTest {
    @TempDir
    private Path folder;

    /** A run 3 m long through a cavity, with its face at the handbooks' average. */
    private static String house(String head, String wide, String high, String run) {
        return head + "cavities: {void: {long: 3000 mm, wide: 1500 mm, high: 200 mm}}\n"
                + "materials: {tin: {rough: 0.09 mm}}\n"
                + "terminals:\n"
                + "  a: {kind: grille, in: void, face: rear, wide: " + wide + ", high: " + high
                + ", at: {left: 500 mm, floor: 60 mm}}\n"
                + "  b: {kind: grille, in: void, face: front, wide: " + wide + ", high: " + high
                + ", at: {left: 500 mm, floor: 60 mm}}\n"
                + "runs: {flat: {from: a, to: b, layers: [{tin: 1 mm}], " + run + "path: [{forward: rest}]}}\n";
    }

    private House read(String yaml, String... sets) throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), yaml);
        HouseResult result = HouseFile.house(file, List.of(), List.of(sets));
        return result instanceof HouseResult.Sound sound ? sound.house() : fail(result);
    }

    private static House fail(HouseResult result) {
        throw new AssertionError(result.toString());
    }

    private static Finding only(House house) {
        List<Finding> findings = new Duct(other -> List.of()).findings(house);
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    private static double found(Finding finding) {
        return finding.value().orElseThrow().number();
    }

    /** Same area as a 100 mm pipe: 3.218 against 1.121 Pa/m in dry air, python3-fluids 1.0.22; half-moist air takes 0.4 % less. */
    @Test
    void sameArea_fails_andSaysWhy() throws IOException {
        Finding finding = only(read(house("", "314", "25", "flow: 20 L/s, replaces: {round: 100}, ")));
        assertEquals("duct.replaces/runs.flat", finding.id());
        assertEquals(Verdict.FAILS, finding.verdict());
        assertEquals(3.218, found(finding), 0.03);
        assertEquals(1.121, finding.required().orElseThrow().number(), 0.01);
        assertTrue(finding.because().contains("is that of a round 100 mm"), finding.because());
        assertTrue(finding.because().contains("2.87 times"), finding.because());
        assertTrue(finding.because().contains("carries like a round of 80.5 mm"), finding.because());
        assertEquals("Pa/m", finding.margin().orElseThrow().unit());
    }

    /** The width at 25 mm depth and 20 L/s is 565 mm by method J, python3-fluids 1.0.22; the remedy makes it pass. */
    @Test
    void remedy_makesItPass_andSpoilsNothing() throws IOException {
        String yaml = house("", "314", "25", "flow: 20 L/s, replaces: {round: 100}, ");
        Remedy remedy = only(read(yaml)).remedies().get(0);
        assertTrue(remedy.says().contains("565 mm by method J alone"), remedy.says());
        assertEquals("terminals.a.wide=581 mm", remedy.set().get(0));
        Finding after = only(read(yaml, remedy.set().toArray(String[]::new)));
        assertEquals(Verdict.PASSES, after.verdict(), after.because());
        assertTrue(after.worst().orElseThrow().number() >= 0);
        assertEquals(List.of(), after.remedies());
    }

    /** The openings keep their middles to a hair's breadth, so that the run still meets both. */
    @Test
    void remedy_holdsAlsoWhereSizesHaveFractions() throws IOException {
        String yaml = house("", "314.23", "25", "flow: 20 L/s, replaces: {round: 100}, ");
        Remedy remedy = only(read(yaml)).remedies().get(0);
        Finding after = only(read(yaml, remedy.set().toArray(String[]::new)));
        assertEquals(Verdict.PASSES, after.verdict(), remedy.set() + after.because());
    }

    @Test
    void flexible_isNotKnown_ratherThanTakenForRigid() throws IOException {
        Finding finding = only(read(house("", "314", "25", "flexible: 15 %, flow: 20 L/s, replaces: {round: 100}, ")));
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertTrue(finding.because().contains("flexible"), finding.because());
        assertEquals(List.of(), finding.remedies());
    }

    @Test
    void remedy_thatSpoilsSomething_isSaidButNotOffered() throws IOException {
        House house = read(house("", "314", "25", "flow: 20 L/s, replaces: {round: 100}, "));
        Finding spoilt = Finding.open("fit.depth", "cavities.void", Optional.empty(), "a beam is in the way.");
        Finding failing = new Finding(
                spoilt.id(),
                spoilt.check(),
                spoilt.subject(),
                spoilt.against(),
                List.of(),
                List.of(),
                Verdict.FAILS,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                spoilt.because(),
                List.of(),
                List.of(),
                "");
        Remedy remedy = new Duct(other -> other == house ? List.of() : List.of(failing))
                .findings(house)
                .get(0)
                .remedies()
                .get(0);
        assertEquals(List.of(), remedy.set());
        assertTrue(remedy.says().startsWith("not possible"), remedy.says());
        assertTrue(remedy.says().endsWith("a beam is in the way."), remedy.says());
    }

    /** Between 565 mm (method J) and 581 mm (no method objects) the methods don't agree. */
    @Test
    void insideTheBand_tight_above_passes() throws IOException {
        String run = "flow: 20 L/s, replaces: {round: 100}, ";
        assertEquals(Verdict.TIGHT, only(read(house("", "566", "25", run))).verdict());
        assertEquals(Verdict.PASSES, only(read(house("", "581", "25", run))).verdict());
    }

    @Test
    void narrowStation_decides() throws IOException {
        String run = "flow: 20 L/s, replaces: {round: 100}, ";
        String even = house("", "600", "25", run);
        String pinched = even.replace(
                "path: [{forward: rest}]",
                "path: [{forward: 1000}, {forward: 200, wide: 300}, {forward: 200, wide: 600}, {forward: rest}]");
        assertEquals(Verdict.PASSES, only(read(even)).verdict());
        Finding finding = only(read(pinched));
        assertEquals(Verdict.FAILS, finding.verdict());
        assertTrue(finding.because().contains("300 x 25 mm"), finding.because());
        assertEquals(1200, finding.where().orElseThrow().position().number(), 1e-6);
        assertEquals(
                List.of("runs.flat.path[2].wide=600 mm"),
                finding.remedies().get(0).set().stream()
                        .map(set -> set.replaceAll("=.*", "=600 mm"))
                        .toList());
    }

    /** Without a flow: 550 to 588 mm at 5 and 1 m/s in the pipe, and what would settle it. */
    @Test
    void noFlow_notKnown() throws IOException {
        Finding finding = only(read(house("", "314", "25", "replaces: {round: 100}, ")));
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertEquals(Optional.of("runs.flat.flow"), finding.against());
        assertTrue(finding.because().contains("is that of a round 100 mm"), finding.because());
        assertTrue(finding.because().contains("a width of 550"), finding.because());
    }

    @Test
    void noPipe_notKnown_nothing_noFinding() throws IOException {
        Finding finding = only(read(house("", "314", "25", "flow: 20 L/s, ")));
        assertEquals(Verdict.NOT_KNOWN, finding.verdict());
        assertEquals("duct.area", finding.check());
        assertTrue(finding.because().contains("carries like a round of 80.5 mm"), finding.because());
        assertEquals(List.of(), new Duct(other -> List.of()).findings(read(house("", "314", "25", ""))));
    }

    @Test
    void inches_giveTheSameFindings() throws IOException {
        String run = "flow: 20 L/s, replaces: {round: 101.6 mm}, ";
        Finding metric = only(read(house("", "304.8", "25.4", run)));
        Finding inches = only(read(house("lengths: in\n", "12", "1", run)));
        assertEquals(metric.because(), inches.because());
        assertEquals(metric.remedies(), inches.remedies());
        assertEquals(found(metric), found(inches), 1e-12);
    }

    @Test
    void altitude_thinsTheAir() throws IOException {
        String yaml = house("", "314", "25", "flow: 20 L/s, replaces: {round: 100}, ");
        double sea = found(only(read(yaml)));
        double mountain = found(only(read(yaml + "climate: {altitude: 1500 m}\n")));
        assertEquals(0.9996 / 1.1989, mountain / sea, 0.05);
        assertTrue(mountain < sea);
    }

    /**
     * 581 x 25 passes; with 1 mm of doubt about its depth it is as 581 x 24, which takes (25/24)^3 = 1.13 times as much: tight.
     * The layers say how much each may add, and the remedy is wide enough for the worst case.
     */
    @Test
    void tolerances_makeItTight_andAreLayers() throws IOException {
        String run = "flow: 20 L/s, replaces: {round: 100}, ";
        Finding sure = only(read(house("", "581", "25", run)));
        Finding finding = only(read(house("", "581", "25 ± 1", run)));
        assertEquals(Verdict.PASSES, sure.verdict());
        assertEquals(Verdict.TIGHT, finding.verdict(), finding.because());
        assertEquals(found(sure), found(finding), 1e-12);
        assertTrue(finding.worst().orElseThrow().number() < 0);
        assertTrue(
                finding.because().contains("With every tolerance against it it is 581 x 24 mm, 13944 mm2 clear"),
                finding.because());
        Layer depth = finding.stack().stream()
                .filter(layer -> layer.minus() > 0)
                .findFirst()
                .orElseThrow();
        assertEquals(25, depth.size().number(), 1e-9);
        assertEquals(1, depth.minus(), 1e-9);
        // Loss goes with the depth to the power of -3: 3/25 of it for each mm.
        assertEquals(3.0 / 25 * found(finding), depth.takes(), 0.02 * found(finding));
    }

    @Test
    void remedy_withTolerances_makesItPass() throws IOException {
        String yaml = house("", "314", "25 ± 0.5", "flow: 20 L/s, replaces: {round: 100}, ");
        Remedy remedy = only(read(yaml)).remedies().get(0);
        Finding after = only(read(yaml, remedy.set().toArray(String[]::new)));
        assertEquals(Verdict.PASSES, after.verdict(), remedy + after.because());
    }

    /** A 3-4-5 slant: 300 up in 400, so that inside the leg a depth of 25 passes as one of 20; its ends are 25. */
    @Test
    void slantInsideALeg_decides() throws IOException {
        String run = "flow: 20 L/s, replaces: {round: 100}, ";
        assertEquals(Verdict.PASSES, only(read(house("", "590", "25", run))).verdict());
        String slanted = house("", "590", "25", run)
                .replace("high: 200 mm", "high: 600 mm")
                .replace(
                        "path: [{forward: rest}]",
                        "path: [{forward: 1000}, {forward: 400, up: 300, slant: yes}, {forward: rest}]")
                .replaceFirst("(?s)(b: .*?)floor: 60 mm", "$1floor: 360 mm");
        Finding finding = only(read(slanted));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertTrue(finding.because().contains("590 x 20 mm"), finding.because());
        assertEquals(1000, finding.where().orElseThrow().position().number(), 1e-6);
    }

    /** The same duct stood on edge has the same friction, and grows by its height about its middle. */
    @Test
    void onEdge_growsByItsHeight() throws IOException {
        String yaml = house("", "25", "314", "flow: 20 L/s, replaces: {round: 100}, ")
                .replace("high: 200 mm", "high: 900 mm")
                .replace("floor: 60 mm", "floor: 300 mm");
        Remedy remedy = only(read(yaml)).remedies().get(0);
        assertTrue(remedy.says().startsWith("make it 581 mm high all along, at the depth of 25 mm"), remedy.says());
        assertEquals(
                List.of(
                        "terminals.a.high=581 mm",
                        "terminals.a.at.floor=166.5 mm",
                        "terminals.b.high=581 mm",
                        "terminals.b.at.floor=166.5 mm"),
                remedy.set());
        Finding after = only(read(yaml, remedy.set().toArray(String[]::new)));
        assertEquals(Verdict.PASSES, after.verdict(), after.because());
    }
}
