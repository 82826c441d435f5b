package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words of a study, what it writes, and that nothing is written where they are wrong. */
class StudyCommandTest {
    private static final String DROP = "cavities.loft.ceiling.drop=0..4 by 2";

    @TempDir
    private Path folder;

    @BeforeEach
    void house() throws IOException {
        Files.writeString(folder.resolve("house.yaml"), text(""));
    }

    /** Above the cooler 46 - 25 = 21 are left, 20 asked; below it 262 + drop - 246, 15 asked. */
    private static String text(String head) {
        return head + """
                  cavities:
                    loft: {long: 1650, wide: 900, high: 262 mm, top: {linings: [{pir: 25 mm}]}}
                  units:
                    cooler: {long: 450 mm, wide: 700 mm, high: 200 mm, at: {top: 46 mm}, clearance: {top: 20 mm, bottom: 15 mm}}
                  """;
    }

    private Answer study(String... words) {
        List<String> all =
                new ArrayList<>(List.of("study", folder.resolve("house.yaml").toString()));
        all.addAll(Arrays.asList(words));
        return Answer.to(all.toArray(String[]::new));
    }

    private String csv(String... words) throws IOException {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of("-o", folder.resolve("out").toString()));
        var answer = study(all.toArray(String[]::new));
        assertTrue(answer.status() < 2, answer.err());
        return Files.readString(folder.resolve("out/study.csv"));
    }

    @Test
    void csv_hasUnitsPointsAndLineFeeds() throws IOException {
        assertEquals("""
                cavities.loft.ceiling.drop [mm],fit.maker,fit.maker margin [mm],fit.maker at worst [mm],fit.maker decided by,\
                fits,front,no such house
                0,passes,1,1,fit.maker/units.cooler.clearance.bottom,yes,yes,
                0.5,passes,1,1,fit.maker/units.cooler.clearance.top,yes,no,
                """, csv("--vary", "cavities.loft.ceiling.drop=0..0.5 by 0.5", "--show", "fit.maker"));
    }

    @Test
    void files_sheetInEveryFormat() throws IOException {
        csv("--vary", DROP);
        for (var name : List.of("study.csv", "study.svg", "house-study.dxf")) {
            assertTrue(Files.size(folder.resolve("out").resolve(name)) > 0, name);
        }
    }

    @Test
    void text_starsWhatToChooseAmong() {
        var answer = study("--vary", DROP, "--vary", "cavities.loft.top.linings[1].pir=25..27 by 1", "--show", "fit");
        assertEquals(0, answer.status(), answer.err());
        assertTrue(answer.out().contains("*  0  26  passes       0         0\n"), answer.out());
        assertTrue(answer.out().contains("   4  27   fails      -1        -1\n"), answer.out());
        assertTrue(
                answer.out()
                        .endsWith("1 to choose among.\n  --set 'cavities.loft.ceiling.drop=0 mm'"
                                + " --set 'cavities.loft.top.linings[1].pir=26 mm'\n"),
                answer.out());
        assertEquals("", answer.err());
    }

    @Test
    void nothingFits_isTold() {
        var answer = study("--vary", "units.cooler.high=210..220 by 5", "--show", "fit");
        assertEquals(1, answer.status(), answer.err());
        assertTrue(answer.out().endsWith("3 points, 0 fit, 0 to choose among.\n"), answer.out());
    }

    /** A bare length is in the file's own unit. */
    @Test
    void inches_asTheFileHasThem() throws IOException {
        Files.writeString(
                folder.resolve("house.yaml"),
                text("lengths: in\n").replace("1650", "65").replace("900", "36"));
        var answer = study("--vary", "cavities.loft.ceiling.drop=0..1 by 1/2", "--show", "fit");
        assertEquals(0, answer.status(), answer.err());
        assertTrue(answer.out().contains("   12.7  passes"), answer.out());
    }

    /** A number that the geometry doesn't rest on is typed over, and the file read again. */
    @Test
    void anyNumberOfTheFile() {
        var answer = study("--vary", "limits.clearance=5..15 by 10", "--show", "fit.clearance");
        assertTrue(answer.status() < 2, answer.err());
        assertTrue(answer.out().contains("limits.clearance"), answer.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "units.cooler.high; is no range of a value; PATH=FROM..TO by STEP",
                "units.cooler.high=a..b; is not a length; PATH=FROM..TO",
                "units.cooler.high=1 kg..2 kg; makes it a mass; PATH=FROM..TO",
                "units.cooler.high=5..1; goes from high to low; PATH=FROM..TO",
                "units.cooler.high=1..5 by 0; a step of nothing or less; above 0",
                "units.cooler.high=1..5 by -1; a step of nothing or less; above 0",
                "units.cooler.high=1..5000 by 1; 5000 points are too many; 400 at most",
                "title=1..5; it isn't a number; name a number",
            })
    void wrongWords_saidAndNothingWritten(String vary, String error, String hint) {
        var answer = study("--vary", vary, "-o", folder.resolve("out").toString());
        answer.assertRefused(error, hint);
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @ParameterizedTest
    @CsvSource({
        "units.cooler.hihg, units.cooler.high",
        "units.colder.high, units.cooler.high",
        "units.cooler.blows, units.cooler.long"
    })
    void wrongPath_theFileSaysWhyAndTheNearestIsNamed(String path, String near) {
        var answer = study("--vary", path + "=1..5", "-o", folder.resolve("out").toString());
        assertEquals(2, answer.status());
        assertEquals("", answer.out());
        assertTrue(answer.err().contains(path), answer.err());
        assertTrue(answer.err().contains("can't sweep " + path), answer.err());
        assertTrue(answer.err().contains("did you mean " + near + "?"), answer.err());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void wrongCounts() {
        study().assertRefused("study needs --vary", "PATH=FROM..TO");
        study("--vary", DROP, "--vary", DROP, "--vary", DROP).assertRefused("3 values", "vary 2 at most");
        study("--vary", "units.cooler.high=1..30 by 1", "--vary", "units.cooler.wide=1..30 by 1")
                .assertRefused("900 points are too many", "400 at most");
    }

    @Test
    void strangeShow_theNearest() {
        study("--vary", DROP, "--show", "fti").assertRefused("there is no check \"fti\"", "did you mean fit?");
        study("--vary", DROP, "--show", "fit/units.coler")
                .assertRefused("says nothing of", "did you mean units.cooler?");
    }

    @Test
    void forceWithoutAFolder() {
        study("--vary", DROP, "--force").assertRefused("nothing is to be written", "add -o DIR");
    }
}
