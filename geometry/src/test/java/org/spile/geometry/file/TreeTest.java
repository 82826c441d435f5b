package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TreeTest {
    private static final String LOFT = """
            title: "Loft"     # a comment
            cavities:
              loft:
                long: 1650
                at: {rear: 5 1/2", left: no}
                top: {linings: [{pir: 25}]}
            """;

    @Test
    void values_knowTheirPlaceAndCharacters() {
        Tree tree = Tree.of("house.yaml", LOFT);
        assertEquals("house.yaml:4:11", place(tree, "cavities.loft.long"));
        assertEquals("1650", characters(tree, "cavities.loft.long"));
        assertEquals("\"Loft\"", characters(tree, "title"));
        assertEquals("{rear: 5 1/2\", left: no}", characters(tree, "cavities.loft.at"));
        assertEquals("5 1/2\"", characters(tree, "cavities.loft.at.rear"));
        assertEquals("[{pir: 25}]", characters(tree, "cavities.loft.top.linings"));
        assertEquals("25", characters(tree, "cavities.loft.top.linings[1].pir"));
        assertTrue(characters(tree, "cavities.loft").startsWith("long: 1650\n"));
        assertTrue(characters(tree, "cavities.loft").endsWith("[{pir: 25}]}"));
    }

    @Test
    void text_staysText() {
        Tree tree = Tree.of("h", "a: no\nb: 12:30\nc: 010\nd: ~\ne: 0x1F\nf: 1_000\ng: 2026-01-01\nh: 'no'\ni:\n");
        assertEquals("no", text(tree, "a"));
        assertEquals("12:30", text(tree, "b"));
        assertEquals("010", text(tree, "c"));
        assertEquals("~", text(tree, "d"));
        assertEquals("0x1F", text(tree, "e"));
        assertEquals("1_000", text(tree, "f"));
        assertEquals("2026-01-01", text(tree, "g"));
        assertEquals("no", text(tree, "h"));
        assertTrue(((TextNode) find(tree, "i")).missing());
        assertFalse(((TextNode) find(Tree.of("h", "i: ''\n"), "i")).missing());
    }

    @Test
    void charactersOutsideTheBasicPlane_countAsOneColumnAndTwoIndexes() {
        Tree tree = Tree.of("h", "a: {x: \ud83d\ude00, y: 15}\nb: \ud83d\ude00\nc: 20\n");
        assertEquals("15", characters(tree, "a.y"));
        assertEquals("h:1:14", place(tree, "a.y"));
        assertEquals("20", characters(tree, "c"));
    }

    @Test
    void linesEndAnyWay() {
        assertEquals("h:2:4", place(Tree.of("h", "a: 1\r\nb: 2\r\n"), "b"));
        assertEquals("2", characters(Tree.of("h", "a: 1\r\nb: 2\r\n"), "b"));
        assertEquals("h:2:4", place(Tree.of("h", "a: 1\rb: 2\r"), "b"));
        assertEquals("2", text(Tree.of("h", "a: 1\nb: 2"), "b"));
    }

    @Test
    void keysTypedTwice_areToldWithBothPlaces() {
        says(
                "a: 1\nb: {x: 1, x: 2}\na: 3\n",
                "h:2:11: \"x\" is already there, in line 2, column 5. Keep one of the two.",
                "h:3:1: \"a\" is already there, in line 1, column 1. Keep one of the two.");
    }

    @Test
    void whatOnlyYamlKnows_isRefusedInTheFilesOwnTerms() {
        says("a: &x 1\n", "h:1:4: \"&x\" is a YAML anchor. To copy a thing, write like: and its name.");
        says(
                "a: &x {k: 1}\nb: *x\n",
                "h:1:4: \"&x\" is a YAML anchor. To copy a thing, write like: and its name.",
                "h:2:4: \"*x\" is a YAML alias. To copy a thing, write like: and its name.");
        says("<<: {a: 1}\n", "h:1:1: \"<<\" merges maps in YAML. To copy a thing, write like: and its name.");
        says("a: !!int 5\n", "h:1:4: \"!\" starts a YAML tag. Leave it out; or quote text that begins with \"!\".");
        says(
                "a: !metric {b: 5}\n",
                "h:1:4: \"!\" starts a YAML tag. Leave it out; or quote text that begins with \"!\".");
        says("? [a, b]\n: 1\n", "h:1:3: A key is a word. Write key: value.");
        says("a: 1\n---\nb: 2\n", "h:2:1: \"---\" starts a second document. A file holds one house.");
    }

    @Test
    void anAliasBomb_isOneProblemAndNoBomb() {
        var bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 5000; i++) {
            bomb.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
        }
        Tree tree = Tree.of("h", bomb.toString());
        assertTrue(tree.broken());
        assertEquals(
                "h:1:5: \"&a0\" is a YAML anchor. To copy a thing, write like: and its name.",
                tree.problems().get(0).toString());
    }

    @Test
    void tooMuch_isRefused() {
        says("a: " + "[".repeat(100_000), "h:1:44: This is nested more than 40 deep. No house needs that.");
        says("a: " + "{b: ".repeat(60), "h:1:161: This is nested more than 40 deep. No house needs that.");
        says(
                "a:\n" + "- 1\n".repeat(250_000),
                "h:199999:3: There are more than 200000 values. No house needs so many.");
    }

    @Test
    void noHouse() {
        says("", "h: There is nothing in this file. Five lines make a house: see the guide.");
        says("# only words\n", "h: There is nothing in this file. Five lines make a house: see the guide.");
        says("- a\n- b\n", "h:1:1: A house file is keys with values. Begin with a line like title: Saltmarsh.");
        says("Saltmarsh", "h:1:1: A house file is keys with values. Begin with a line like title: Saltmarsh.");
    }

    @Test
    void syntaxFaults_standAloneInPlainWords() {
        says("a:\n\tb: 1\na: 2\n", "h:2:1: A tab indents this line. Indent with spaces.");
        says(
                "a: b: c\n",
                "h:1:5: A second \": \" stands here. Quote text that holds \": \"; or indent this line like its neighbours.");
        says(
                "a: 1\n b: 2\n",
                "h:2:3: A second \": \" stands here. Quote text that holds \": \"; or indent this line like its neighbours.");
        says("a: @x\n", "h:1:4: A value can't begin with \"@\". Quote it: \"@ ...\".");
        says("a: % x\n", "h:1:4: A value can't begin with \"%\". Quote it: \"% ...\".");
        says(
                "a: \"open\nb: 1\n",
                "h:3:1: The quote opened in line 1, column 4 is never closed. Close it in its own line.");
        says(
                "a: {b: 1\nc: 2\n",
                "h:2:2: The { opened in line 1, column 4 is not closed here. Put a comma or } before this.");
        says(
                "a: [1, 2\nb: 3\n",
                "h:2:2: The [ opened in line 1, column 4 is not closed here. Put a comma or ] before this.");
        says("a: - b\n", "h:1:4: A dash can't begin a value here. Begin lists on their own line, or write [a, b].");
        says("a: 1\nb\nc: 2\n", "h:3:1: A line before this is no key with a value. Write key: value.");
        says(
                "a: 'x'y\n",
                "h:1:7: This does not fit what line 1, column 1 began. Indent keys of one thing by the same spaces.");
        says(
                "a:\n    b: 1\n  c: 2\n",
                "h:3:3: This does not fit what line 1, column 1 began. Indent keys of one thing by the same spaces.");
        says("{a: 1}}\n", "h:1:7: This can't be read as YAML: expected '<document start>', but found '}'.");
    }

    @Test
    void aDecimalComma_inBraces() {
        says(
                "at: {left: 0,5 m}\n",
                "h:1:12: \"0,5 m\": between { } a comma starts the next entry; this reads as left: 0 and a key \"5 m\". Write left: 0.5 m.");
        says(
                "at: {left: 0,5 m, rear: 20}\nb: {high: 26,2}\n",
                "h:1:12: \"0,5 m\": between { } a comma starts the next entry; this reads as left: 0 and a key \"5 m\". Write left: 0.5 m.",
                "h:2:11: \"26,2\": between { } a comma starts the next entry; this reads as high: 26 and a key \"2\". Write high: 26.2.");
        assertEquals("0", text(Tree.of("h", "at: {left: 0,5 m}\n"), "at.left"));
        assertEquals(
                1,
                ((MapNode) find(Tree.of("h", "at: {left: 0,5 m}\n"), "at"))
                        .entries()
                        .size());
    }

    @Test
    void aKeyWithoutColon_inBraces() {
        says("a: {high:200}\n", "h:1:5: \"high:200\" is no key with a value. A space follows the colon: high: 200.");
        says("a: [{ply 6}]\n", "h:1:6: \"ply 6\" is no key with a value. Write ply: 6.");
        says("a: {b}\n", "h:1:5: \"b\" is no key with a value. Write key: value.");
        says("a: {b: , c: 1}\n");
    }

    @Test
    void aHash_thatCutsATitle() {
        says(
                "title: Site cabin #3\n",
                "h:1:19: \" #\" starts a comment, so the title reads \"Site cabin\". To keep the rest, quote it: \"Site cabin #3\".");
        says(
                "title: Cabin #B, north\n",
                "h:1:14: \" #\" starts a comment, so the title reads \"Cabin\". To keep the rest, quote it: \"Cabin #B, north\".");
        says(
                "a: {in: cabin #3\n}\n",
                "h:1:15: \" #\" starts a comment, so the in reads \"cabin\". To keep the rest, quote it: \"cabin #3\".");
        says("title: Site cabin # 3\n");
        says("title: Site cabin  #3\n");
        says("title: \"Site cabin\" #3\n");
        says("long: 450 #3\n");
        says("in: lobby #check\n");
    }

    private static void says(String text, String... lines) {
        assertEquals(
                String.join("\n", lines),
                String.join(
                        "\n",
                        Tree.of("h", text).problems().stream()
                                .map(Problem::toString)
                                .toList()),
                text.length() > 80 ? text.substring(0, 80) : text);
    }

    static Node find(Tree tree, String path) {
        Node node = tree.root();
        for (DocumentPath.Step step : DocumentPath.of(path).orElseThrow().steps()) {
            node = step.isKey()
                    ? ((MapNode) node).value(step.key()).orElseThrow()
                    : ((ListNode) node).items().get(step.item() - 1);
        }
        return node;
    }

    private static String place(Tree tree, String path) {
        return find(tree, path).place().toString();
    }

    private static String characters(Tree tree, String path) {
        return find(tree, path).span().of(tree.text());
    }

    private static String text(Tree tree, String path) {
        return ((TextNode) find(tree, path)).text();
    }
}
