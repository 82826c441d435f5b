package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ducts and bodies that can't be: refused with their place, status 2, and nothing written. */
class BadDuctTest {
    /** Clear 200 x 100 from the rear, out at the left or the front; five lines. */
    private static final String LOFT = """
            cavities: {loft: {long: 3000, wide: 2000, high: 400}}
            terminals:
              a: {kind: grille, in: loft, face: rear, wide: 200, high: 100, at: {left: 500, floor: 100}}
              b: {kind: grille, in: loft, face: left, wide: 200, high: 100, at: {rear: 1500, floor: 100}}
              c: {kind: grille, in: loft, face: front, wide: 200, high: 100, at: {left: 500, floor: 100}}
            """;

    /** A branch 150 x 80 from the main's right side to the right wall. */
    private static final String BRANCHED = """
            cavities: {loft: {long: 3000, wide: 2000, high: 400}}
            terminals:
              a: {kind: grille, in: loft, face: rear, wide: 200, high: 100, at: {left: 500, floor: 100}}
              c: {kind: grille, in: loft, face: front, wide: 200, high: 100, at: {left: 500, floor: 100}}
              d: {kind: grille, in: loft, face: right, wide: 150, high: 80, at: {rear: 1425, floor: 110}}
            runs:
              main: {from: a, to: c, layers: [{galv: 0.6}], path: [{forward: rest}]}
              side: {from: {run: main, after: 1500, side: right}, to: d, layers: [{galv: 0.6}], path: [{wide: 150, high: 80}, {right: rest}]}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            from: a, to: c, layers: [{galv: 0}], path: [{forward: rest}] | :6:47: | "0": this must be more than nothing
            from: a, to: c, layers: [{galv: 0.6}], path: [{forward: 1000}, {forward: 2500, wide: 300}, {forward: rest, wide: 200}] | :6:116: | lies 500 the other way
            from: a, to: b, layers: [{galv: 0.6}], path: [{forward: rest}, {left: 40, wide: 300, bend: radius 150}, {left: rest, wide: 200}] | :6:78: | a leg of 40 is too short for its bends, which take 150
            from: a, to: b, layers: [{galv: 0.6}], path: [{forward: rest}, {left: 150, wide: 300, bend: radius 150}, {left: rest, wide: 200}] | :6:78: | leave no length for its change of section
            from: a, to: b, layers: [{galv: 0.6}], path: [{forward: rest}, {left: rest, bend: radius 80}] | :6:78: | a bend of radius 80 is tighter than half of what it bends, 100.6
            from: a, to: b, layers: [{galv: 0.6}], path: [{forward: rest}, {left: rest, bend: radius 0}] | :6:97: | "0": this must be more than nothing
            from: a, to: c, layers: [{galv: 0.6}], screws: {tip: 50}, path: [{forward: rest}] | :6:68: | screw tips of 50 meet in the middle of 100 of duct at runs.main.path[1]
            from: a, to: c, layers: [{galv: 0.6}], screws: {tip: 49, thick: 14, apart: 20}, path: [{forward: rest}] | :6:90: | 30 screw tips cover all of the duct
            from: a, to: b, layers: [{galv: 0.6}], bends: vanes, vanes: {apart: 20, thick: 20}, path: [{forward: rest}, {left: rest}] | :6:94: | 14 vanes of 20 fill the bend before runs.main.path[2], 200 across
            from: a, to: b, layers: [{galv: 0.6}], bends: vanes, vanes: {apart: 0}, path: [{forward: rest}, {left: rest}] | :6:83: | "0": this must be more than nothing
            """)
    void run_thatCannotBeMade(String run, String place, String words) throws IOException {
        assertRefused(LOFT + "runs: {main: {" + run + "}}\n", place, words);
    }

    /** The right side is 100 high; the main is 3000 long, so that 150 of opening end at 75 and 2925. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {wide: 150, high: 80}, {right: rest} | {wide: 150, high: 120}, {right: rest} | :8:16: | an opening 120 high is larger than the right side of main, 100 high
            after: 1500 | after: 70 | :8:35: | an opening 150 long reaches 5 over the edge of main's straight there. It lies within from 75 to 2925.
            after: 1500 | after: 2930 | :8:35: | an opening 150 long reaches 5 over the edge
            {right: rest} | {forward: 100}, {right: rest} | :8:115: | goes forward at the right side of main
            [{forward: rest}] | [{forward: 1400}, {forward: 200, high: 120}, {forward: rest, high: 100}] | :8:16: | main slants or changes its section at runs.main.path[2]
            """)
    void takeoff_thatItsSideDoesNotTake(String right, String wrong, String place, String words) throws IOException {
        assertTrue(BRANCHED.contains(right), right);
        assertRefused(BRANCHED.replace(right, wrong), place, words);
    }

    @Test
    void takeoff_withinItsSide_isSound() throws IOException {
        assertEquals(0, checked(BRANCHED).status());
        assertEquals(
                0,
                checked(BRANCHED.replace("high: 80", "high: 100").replace("floor: 110", "floor: 100"))
                        .status());
    }

    /** The bend, 200 wide, takes 100 of the main before its corner at 1600; an opening 100 long about 1460 ends at 1510. */
    @Test
    void takeoff_thatReachesIntoAMitre() throws IOException {
        String text = LOFT + """
                runs:
                  main: {from: a, to: b, layers: [{galv: 0.6}], path: [{forward: rest}, {left: rest}]}
                  side: {from: {run: main, after: 1460, side: right}, to: d, layers: [{galv: 0.6}], path: [{wide: 100, high: 80}, {right: rest}]}
                """;
        String main = text.replace("terminals:\n", """
                terminals:
                  d: {kind: grille, in: loft, face: right, wide: 100, high: 80, at: {rear: 1410, floor: 110}}
                """);
        assertRefused(main, ":9:35: ", "an opening 100 long reaches 10 over the edge");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fixtures: {stud: {in: loft, at: {rear: 1000, left: 800, floor: 0}, long: 0, wide: 50, high: 50}} | :6:74: | "0": this must be more than nothing
            fixtures: {stud: {in: loft, at: {rear: 1000, left: 800, floor: 0}, round: 0, high: 50}} | :6:75: | "0": this must be more than nothing
            fixtures: {stud: {in: loft, at: {rear: 1000, left: 800, floor: 0}, outline: [[0,0],[100,0],[200,0]], high: 50}} | :6:77: | the outline crosses itself
            units: {box: {in: loft, at: {rear: 1000, left: 800, floor: 0}, long: 300, wide: 0, high: 150}} | :6:81: | "0": this must be more than nothing
            """)
    void body_withoutRoom(String thing, String place, String words) throws IOException {
        assertRefused(LOFT + thing + "\n", place, words);
    }

    private Answer checked(String text) throws IOException {
        return Answer.to(
                "check", Files.writeString(folder.resolve("house.yaml"), text).toString());
    }

    private void assertRefused(String text, String place, String words) throws IOException {
        Answer checked = checked(text);
        assertEquals(2, checked.status(), checked.out());
        assertEquals("", checked.out());
        String first = checked.err().lines().findFirst().orElseThrow();
        assertTrue(first.contains("house.yaml" + place) && first.contains(words), checked.err());
        Path sheets = folder.resolve("sheets");
        Answer drawn = Answer.to("draw", folder.resolve("house.yaml").toString(), "-o", sheets.toString());
        assertEquals(2, drawn.status());
        assertFalse(Files.exists(sheets));
        assertEquals(List.of("house.yaml"), List.of(folder.toFile().list()));
    }
}
