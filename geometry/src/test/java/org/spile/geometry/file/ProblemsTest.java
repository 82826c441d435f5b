package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProblemsTest {
    private static final Place PLACE = new Place("house.yaml", 5, 11);

    @Test
    void problem_asOneLine() {
        assertEquals(
                "house.yaml:5:11: cavities.loft has no \"depth\". Its upright size is \"high\".",
                Problem.error(
                                PLACE,
                                "cavities.loft",
                                "cavities.loft has no \"depth\".",
                                "Its upright size is \"high\".")
                        .toString());
        assertEquals(
                "house.yaml:5:11: cavities.loft.high: 26.2 mm is unlikely, 262 mm is usual. Write 26.2 cm; or 26.2 mm if you mean it.",
                Problem.doubt(
                                PLACE,
                                "cavities.loft.high",
                                "26.2 mm is unlikely, 262 mm is usual.",
                                "Write 26.2 cm; or 26.2 mm if you mean it.")
                        .toString());
        assertEquals(
                "house.yaml: There is no such file.",
                Problem.error(Place.whole("house.yaml"), "", "There is no such file.", "")
                        .toString());
    }

    @Test
    void list_isInTheOrderOfTheFileAndWithoutRepeats() {
        var problems = new Problems();
        problems.error(new Place("h", 3, 1), "", "third", "");
        problems.error(new Place("h", 1, 9), "", "second", "");
        problems.doubt(new Place("h", 1, 2), "", "first", "");
        problems.error(new Place("h", 1, 9), "", "second", "");
        assertEquals(
                "[h:1:2: first, h:1:9: second, h:3:1: third]", problems.list().toString());
    }

    @Test
    void flood_isCutOff() {
        var problems = new Problems();
        for (int i = 1; i <= 500; i++) {
            problems.error(new Place("h", i, 1), "", "wrong", "");
        }
        assertEquals(101, problems.list().size());
        assertEquals(
                "h:101:1: There are more problems from here on. Put these right first.",
                problems.list().get(100).toString());
    }

    @Test
    void paths() {
        assertEquals(
                "runs.lab-supply.path[3].wide",
                DocumentPath.of("runs.lab-supply.path[3].wide").orElseThrow().toString());
        assertEquals(
                "a.b[2][1]", DocumentPath.TOP.key("a").key("b").item(2).item(1).toString());
        for (String wrong :
                new String[] {"", ".", "a.", "a..b", "[1]", "a[0]", "a[x]", "a b", "a[1]b", "a=b", "a.[1]"}) {
            assertEquals(
                    "none", DocumentPath.of(wrong).map(DocumentPath::toString).orElse("none"), wrong);
        }
    }
}
