package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class EditsTest {
    @Test
    void edit_isSplitAtItsFirstEqualsSign() {
        assertEquals(new Edit("a.b", "c=d"), Edit.of(" a.b = c=d "));
        assertEquals("a.b=c=d", Edit.of("a.b=c=d").toString());
        assertEquals(new Edit("a.b", ""), Edit.of("a.b"));
    }

    @Test
    void aNumber_keepsToleranceOriginAndOut() {
        becomes(
                "units:\n  cooler: {high: 200 ± 1 maker, long: 450}  # bought\n",
                "units.cooler.high=205",
                "units:\n  cooler: {high: 205 ± 1 maker, long: 450}  # bought\n");
        becomes("a:\n  front: 180 out   # beyond\n", "a.front=150", "a:\n  front: 150 out   # beyond\n");
        becomes("a: {flow: 25 L/s}\n", "a.flow=30", "a: {flow: 30 L/s}\n");
        becomes("lengths: in\na: {high: 8 ± 1/8}\n", "a.high=210 mm", "lengths: in\na: {high: 210 mm ± 1/8 in}\n");
        becomes("a: {in: lobby-top}\n", "a.in=lab-top", "a: {in: lab-top}\n");
        becomes("a: [{pir: 25 ± 1}, {ply: 6}]\n", "a[1].pir=13", "a: [{pir: 13 ± 1}, {ply: 6}]\n");
        becomes(
                "fan:\n  high:\n    - 105 L/s at 10 Pa\n    - 85 L/s at 25 Pa\n",
                "fan.high[2]=90 L/s",
                "fan:\n  high:\n    - 105 L/s at 10 Pa\n    - 90 L/s at 25 Pa\n");
    }

    @Test
    void oneOfAPair() {
        becomes("a: {rear: 90..1890 measured}\n", "a.rear[2]=1900", "a: {rear: 90..1900 measured}\n");
        becomes("a: {rear: 90 ± 2..1890}\n", "a.rear[1]=95", "a: {rear: 95 ± 2..1890}\n");
        becomes("a: {f: [120 L/s at 30 Pa]}\n", "a.f[1][2]=35", "a: {f: [120 L/s at 35 Pa]}\n");
        becomes("a: {load: 60 kg..110 kg}\n", "a.load[1]=65", "a: {load: 65 kg..110 kg}\n");
    }

    @Test
    void aSurfaceGivenAsANumber_becomesAMap() {
        becomes(
                "c:\n  lab-top: {ceiling: 1950, long: 620}\n",
                "c.lab-top.ceiling.drop=8",
                "c:\n  lab-top: {ceiling: {at: 1950, drop: 8}, long: 620}\n");
        becomes(
                "c:\n  lab-top:\n    ceiling: 1950 ± 3 measured   # tape\n    long: 620\n",
                "c.lab-top.ceiling.drop=8",
                "c:\n  lab-top:\n    ceiling: {at: 1950 ± 3 measured, drop: 8}   # tape\n    long: 620\n");
        becomes(
                "c: {x: {ceiling: 79 1/2\"}}\n",
                "c.x.ceiling.linings=[{ply: 6}]",
                "c: {x: {ceiling: {at: 79 1/2\", linings: [{ply: 6}]}}}\n");
        becomes("c: {ceiling: {at: 1950 ± 3, drop: 8}}\n", "c.ceiling=1945", "c: {ceiling: {at: 1945 ± 3, drop: 8}}\n");
    }

    @Test
    void missingKeys_areAddedInTheStyleOfTheirMap() {
        becomes(
                "cavities:\n  loft:\n    long: 1650\n    high: 262      # bare roof\n\nunits: {}\n",
                "cavities.loft.ceiling.drop=10",
                "cavities:\n  loft:\n    long: 1650\n    high: 262      # bare roof\n    ceiling: {drop: 10}\n\nunits: {}\n");
        becomes("a: {b: 1}\n", "a.c=2", "a: {b: 1, c: 2}\n");
        becomes("a: {b: 1, }\n", "a.c=2", "a: {b: 1, c: 2 }\n");
        becomes("a: {\n  b: 1,  # one, two\n}\n", "a.c=2", "a: {\n  b: 1, c: 2  # one, two\n}\n");
        becomes("a: {}\n", "a.c=2", "a: {c: 2}\n");
        becomes("a:\n", "a.c=2", "a: {c: 2}\n");
        becomes("a:   # none yet\nb: 1\n", "a.c=2", "a: {c: 2}   # none yet\nb: 1\n");
        becomes("a: {b: , c: 1}\n", "a.b.d=2", "a: {b: {d: 2} , c: 1}\n");
        becomes("a:\n  - b: 1\n    c: 2\n", "a[1].d=3", "a:\n  - b: 1\n    c: 2\n    d: 3\n");
        becomes("a:\n  b: |\n    some\n    words\n", "a.c=1", "a:\n  b: |\n    some\n    words\n  c: 1\n");
        becomes("a: 1", "b=2", "a: 1\nb: 2");
        becomes("a: 1\r\nb:\r\n  c: 2\r\n", "b.d=3", "a: 1\r\nb:\r\n  c: 2\r\n  d: 3\r\n");
        becomes("title: x\n", "limits.clearance=10", "title: x\nlimits:\n  clearance: 10\n");
        becomes(
                "title: x\n",
                "climate.frost.outside=-8 degC at 85 %",
                "title: x\nclimate:\n  frost: {outside: -8 degC at 85 %}\n");
        becomes("title: x\n", "materials.foam.tolerance=± 2", "title: x\nmaterials:\n  foam: {tolerance: ± 2}\n");
        becomes("\ufefftitle: x\n", "lengths=in", "\ufefftitle: x\nlengths: in\n");
    }

    @Test
    void listsGrowAtTheirEnd() {
        becomes("a: [1, 2]\n", "a[3]=5", "a: [1, 2, 5]\n");
        becomes("a: []\n", "a[1]=5", "a: [5]\n");
        becomes("a:\n  - 1\n  - 2   # two\nb: 1\n", "a[3]=5", "a:\n  - 1\n  - 2   # two\n  - 5\nb: 1\n");
        becomes("a:\n- 1\n", "a[2].pir=25", "a:\n- 1\n- {pir: 25}\n");
        becomes("a: {top: {b: 1}}\n", "a.top.linings[1].pir=25", "a: {top: {b: 1, linings: [{pir: 25}]}}\n");
    }

    @Test
    void aWholeThing_isAddedOrReplaced() {
        becomes(
                "fixtures:\n  rail: {long: 60}\n",
                "fixtures.shelf={in: lobby, long: 300, at: {front: 0}}",
                "fixtures:\n  rail: {long: 60}\n  shelf: {in: lobby, long: 300, at: {front: 0}}\n");
        becomes("title: x\n", "fixtures.shelf={in: lobby}", "title: x\nfixtures:\n  shelf: {in: lobby}\n");
        becomes("a: {b: {c: 1}}\n", "a.b={d: 2}", "a: {b: {d: 2}}\n");
        becomes("a:\n  b:\n    c: 1  # one\n  d: 2\n", "a.b={e: 3}", "a:\n  b: {e: 3}  # one\n  d: 2\n");
        becomes("a:\n  b:   # why\n    c: 1\n  d: 2\n", "a.b={e: 3}", "a:\n  b:   # why\n    {e: 3}\n  d: 2\n");
        becomes("a:\n- 1\n- 2\nb: 3\n", "a=[4]", "a: [4]\nb: 3\n");
        becomes("a:\n  - {b: 1}\n  - c: 2\n    d: 3\n", "a[2]={e: 4}", "a:\n  - {b: 1}\n  - {e: 4}\n");
        becomes("a: {b: 1}\n", "a.b=[1, 2]", "a: {b: [1, 2]}\n");
        becomes("a:\n", "a={b: 1}", "a: {b: 1}\n");
    }

    @Test
    void whatAThingHasByLike_isWrittenOutInTheCopy() {
        becomes(
                "units:\n  fan-a: {long: 38 ± 1, fan: {full: [40 L/s at 0 Pa]}}\n  fan-b: {like: fan-a}\n",
                "units.fan-b.long=40",
                "units:\n  fan-a: {long: 38 ± 1, fan: {full: [40 L/s at 0 Pa]}}\n  fan-b: {like: fan-a, long: 40 ± 1}\n");
        becomes(
                "units:\n  fan-a: {fan: {full: [40 L/s at 0 Pa, 0 L/s at 60 Pa]}}\n  fan-b: {like: fan-a}\n",
                "units.fan-b.fan.full[1]=45",
                "units:\n  fan-a: {fan: {full: [40 L/s at 0 Pa, 0 L/s at 60 Pa]}}\n  fan-b: {like: fan-a, fan: {full: [45 L/s at 0 Pa, 0 L/s at 60 Pa]}}\n");
        becomes(
                "u:\n  a: {at: {x: 1, y: 2}}\n  b: {like: a}\n  c: {like: b}\n",
                "u.c.at.y=3",
                "u:\n  a: {at: {x: 1, y: 2}}\n  b: {like: a}\n  c: {like: b, at: {x: 1, y: 3}}\n");
        becomes(
                "u:\n  a: {ceiling: 1950}\n  b: {like: a}\n",
                "u.b.ceiling.drop=8",
                "u:\n  a: {ceiling: 1950}\n  b: {like: a, ceiling: {at: 1950, drop: 8}}\n");
        becomes(
                "u:\n  a: {at: {x: 1}}\n  b: {like: a}\n",
                "u.b.at={y: 2}",
                "u:\n  a: {at: {x: 1}}\n  b: {like: a, at: {y: 2}}\n");
        becomes(
                "u:\n  a: {like: b}\n  b: {like: a}\n",
                "u.b.mass=2 kg",
                "u:\n  a: {like: b}\n  b: {like: a, mass: 2 kg}\n");
    }

    @Test
    void quotes_whereTheyAreNeeded() {
        becomes("title: x\n", "title=Site cabin #3", "title: \"Site cabin #3\"\n");
        becomes("title: x\n", "title=Port: aft", "title: \"Port: aft\"\n");
        becomes("title: x\n", "title=\"Port: aft\"", "title: \"Port: aft\"\n");
        becomes("title: x\n", "title='as is'", "title: \"x\"\n".replace("\"x\"", "as is"));
        becomes("title: \"x\"\n", "title=y", "title: \"y\"\n");
        becomes("title: 'x'\n", "title=x", "title: 'x'\n");
        becomes("a: {b: 1}\n", "a.b=1' 6\"", "a: {b: 1' 6\"}\n");
        becomes("a: {b: x}\n", "a.b=one, two", "a: {b: \"one, two\"}\n");
        becomes("a: x\n", "a=one, two", "a: one, two\n");
        becomes("a: x\n", "a=@home", "a: \"@home\"\n");
        becomes("a: x\n", "a=5\" pipe \\ wall", "a: 5\" pipe \\ wall\n");
        becomes("a: x\n", "a=- \"q\" \\", "a: \"- \\\"q\\\" \\\\\"\n");
        becomes("a: {ceiling: \"1950\"}\n", "a.ceiling.drop=8", "a: {ceiling: {at: \"1950\", drop: 8}}\n");
        becomes("a: |\n  some\n  words\nb: 1\n", "a=word", "a: word\nb: 1\n");
    }

    @Test
    void theOldValue_changesNothing() {
        becomes("a: {b:   208 +/- 3 measured}\n", "a.b=208 +/- 3 measured", "a: {b:   208 +/- 3 measured}\n");
        becomes("a: {b:   208 +/- 3 measured}\n", "a.b=208", "a: {b:   208 ± 3 measured}\n");
        becomes("a:\n  b: 1\n  c: 2\n", "a={c: 2, b: 1}", "a:\n  b: 1\n  c: 2\n");
    }

    @Test
    void severalEdits_inOrder() {
        Edited edited =
                Edits.apply("a: {b: 1}\n", List.of(Edit.of("a.b=2"), Edit.of("a.c={d: 1}"), Edit.of("a.c.d=3")));
        assertEquals(new Edited.Done("a: {b: 2, c: {d: 3}}\n"), edited);
    }

    @Test
    void whatCantBeDone_isTold() {
        String house = "cavities:\n  loft: {long: 1650, high: 262}\nunits:\n  cooler: {path: [{left: 1}, {aft: 2}]}\n";
        refused(
                house,
                "cavities.lft.high=205",
                "edit \"cavities.lft.high=205\": there is no \"lft\" in cavities. Nearest: \"loft\". To add it, give it whole: cavities.lft={...}.");
        refused(
                house,
                "movers.hatch.long=5",
                "edit \"movers.hatch.long=5\": there is no \"hatch\" in movers. To add it, give it whole: movers.hatch={...}.");
        refused(
                house,
                "cavities.loft=5",
                "edit \"cavities.loft=5\": cavities.loft holds long, high. Name one of them; or give all of it in braces.");
        refused(
                house,
                "units.cooler.path=5",
                "edit \"units.cooler.path=5\": units.cooler.path holds [1], [2]. Name one of them; or give all of it in braces.");
        refused(
                house,
                "units.cooler.path[4].left=5",
                "edit \"units.cooler.path[4].left=5\": units.cooler.path is a list of 2. Name an item: units.cooler.path[1].");
        refused(
                house,
                "units.cooler.path.left=5",
                "edit \"units.cooler.path.left=5\": units.cooler.path is a list of 2. Name an item: units.cooler.path[1].");
        refused(
                house,
                "cavities.loft[1]=5",
                "edit \"cavities.loft[1]=5\": cavities.loft is no list. Name a key: long, high.");
        refused(
                house,
                "cavities.loft.long.wide=5",
                "edit \"cavities.loft.long.wide=5\": cavities.loft.long is one value, \"1650\". There is nothing below it to change.");
        refused(
                house,
                "cavities.loft.long[1]=5",
                "edit \"cavities.loft.long[1]=5\": cavities.loft.long is one value, \"1650\". There is nothing below it to change.");
        refused(house, "cavities.loft.long", "edit \"cavities.loft.long=\": There is no value. Write PATH=VALUE.");
        refused(house, "=5", "edit \"=5\": \"\" is no path. Keys are joined by dots: cavities.loft.high.");
        refused(house, "a..b=5", "edit \"a..b=5\": \"a..b\" is no path. Keys are joined by dots: cavities.loft.high.");
        refused(
                house,
                "cavities.loft.at={rear: 5",
                "edit \"cavities.loft.at={rear: 5\": The { opened in line 1, column 4 is not closed here. Put a comma or } before this.");
        refused(
                house,
                "cavities.loft.at={rear: 0,5}",
                "edit \"cavities.loft.at={rear: 0,5}\": \"0,5\": between { } a comma starts the next entry; this reads as rear: 0 and a key \"5\". Write rear: 0.5.");
        refused(
                house,
                "cavities.loft.at={rear: 5}\nx: 1",
                "edit \"cavities.loft.at={rear: 5}\ufffdx: 1\": The value is more than one line. Write it in one line.");
    }

    @Test
    void anUnusableText_isNotEdited() {
        refused(
                "a: 1\na: 2\n",
                "a=3",
                "house file:2:1: \"a\" is already there, in line 1, column 1. Keep one of the two.");
        refused("", "a=3", "house file: There is nothing in this file. Five lines make a house: see the guide.");
    }

    private static void becomes(String text, String edit, String result) {
        assertEquals(new Edited.Done(result), Edits.apply(text, List.of(Edit.of(edit))), edit);
    }

    private static void refused(String text, String edit, String says) {
        Edited edited = Edits.apply(text, List.of(Edit.of(edit)));
        assertEquals(
                "[" + says + "]",
                edited instanceof Edited.Undone undone ? undone.problems().toString() : edited.toString());
    }
}
