package org.spile.exporters.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Findings;

class ReportTextTest {
    @Test
    void everyVerdict_asAPersonReadsIt() throws IOException {
        // Our own text, pinned; the numbers are worked by hand in Examples.
        assertEquals("""
                Saltmarsh field station
                with thin-foam

                FAILS
                  fit.clearance: units.cooler to cavities.lobby-top.ceiling
                    Between the cooler's underside and the ceiling's battens are 9 mm; its maker
                    asks for 15 mm.
                    in every stance; from (610, -460.3, 1996) to (610, -460.3, 1987)
                    source: maker's, house file: units.cooler.clearance.bottom
                      + 2244    mm  ± 3              trailers.bunk.roof.profile[2].up
                      -   48    mm  ± 2              units.cooler.at.top
                      -  200    mm  ± 1    maker     units.cooler.high
                      - 1962    mm  ± 3    measured  cavities.lobby-top.ceiling.at
                      -   19    mm  ± 1              cavities.lobby-top.ceiling.linings[1].batten
                      -    6    mm  ± 0.5            cavities.lobby-top.ceiling.linings[2].ply
                      =    9    mm
                      eaten by 3 mm of trailers.bunk.roof.profile[2].up, 3 mm of
                      cavities.lobby-top.ceiling.at, 2 mm of units.cooler.at.top, 1 mm of
                      units.cooler.high, 1.5 mm of 2 more
                    rests on assumed trailers.bunk.roof.profile[2].up
                    remedy: Lower the ceiling of lobby-top by 16.5 mm.
                      --set cavities.lobby-top.ceiling.drop=16.5
                    remedy: Take thinner linings.
                      --set 'cavities.lobby-top.ceiling.linings[1].batten=8.5' --set 'cavities.lobby-top.ceiling.linings[2].ply=0'

                TIGHT
                  fit.clearance: runs.lab-supply.path[3] to fixtures.rail
                    The duct passes the rail at 7.4 mm.
                    in parked; while day; at 845 mm of runs.lab-supply path[3]
                    source: house file: limits.clearance
                    eaten by 2 mm of fixtures.rail.high

                NOT KNOWN
                  tow: trailers to masses
                    What the coupling carries needs masses.

                PASSES by so much, and so much with every tolerance against it
                  2 mm  2 mm  fit.depth: units.cooler to cavities.lobby-top

                1 fails, 1 tight, 1 not known, 1 passes
                """, text(Examples.report(), Ink.PLAIN));
    }

    @Test
    void colour_addsControlSequencesAndNothingElse() throws IOException {
        var coloured = text(Examples.report(), Ink.COLOUR);
        assertTrue(coloured.contains("\u001b[1;31mFAILS\u001b[0m"), coloured);
        assertEquals(text(Examples.report(), Ink.PLAIN), coloured.replaceAll("\u001b\\[[0-9;]*m", ""));
    }

    @Test
    void nothingFound_saysSo() throws IOException {
        var report = new Report("1.2.3", "hut.yaml", "", List.of(), List.of(), Findings.of(List.of()));
        assertEquals("hut.yaml\n\n0 fail, 0 tight, 0 not known, 0 pass\n", text(report, Ink.PLAIN));
    }

    @Test
    void nothingToMeasure_saysWhyItPasses() throws IOException {
        var finding = Examples.free();
        var report = new Report("1.2.3", "hut.yaml", "", List.of(), List.of(), Findings.of(List.of(finding)));
        assertTrue(
                text(report, Ink.PLAIN)
                        .contains("\n  -  -  fit.maker: units.cooler (nothing lies in front of cooler)\n"),
                text(report, Ink.PLAIN));
    }

    @Test
    void quoting_holdsInAPosixShell() throws IOException, InterruptedException {
        var awkward = "fixtures.shelf={in: lobby, title: 'a \"b\" $HOME `x` \\ #1'}";
        var process = new ProcessBuilder("sh", "-c", "printf %s " + ShellWord.quoted(awkward)).start();
        assertEquals(awkward, new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        assertEquals(0, process.waitFor());
        assertFalse(ShellWord.quoted("a.b=1.5").contains("'"));
        assertEquals("''", ShellWord.quoted(""));
    }

    private static String text(Report report, Ink ink) throws IOException {
        var out = new StringBuilder();
        ReportText.in(ink).write(report, out);
        return out.toString();
    }
}
