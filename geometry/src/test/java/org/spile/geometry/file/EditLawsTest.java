package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Laws of edits on generated house files in every mixture of styles and comments.
 *
 * <p>Both texts are re-read by the YAML library's own loader with text kept as text, not by our tree.
 */
class EditLawsTest {
    @Property(tries = 400)
    void anEdit_changesItsPathAndNothingElse(@ForAll long seed) {
        law(new Random(seed));
    }

    private static void law(Random random) {
        String text = house(random);
        Map<String, String> before = leaves(text);
        String path = pick(random, before.keySet());
        String value = value(random);
        String after = done(text, path, value);
        before.put(path, value);
        assertEquals(before, leaves(after), text + "\n" + path + "=" + value + "\n" + after);
        assertEquals(comments(text), comments(after), after);
    }

    @Property(tries = 300)
    void editsOfDifferentPaths_commute(@ForAll long seed) {
        commute(new Random(seed));
    }

    private static void commute(Random random) {
        String text = house(random) + "last: {one: 1, two: 2}\n";
        var paths = new ArrayList<>(leaves(text).keySet());
        String one = pick(random, paths);
        paths.remove(one);
        String other = pick(random, paths);
        String first = value(random);
        String second = value(random);
        assertEquals(done(done(text, one, first), other, second), done(done(text, other, second), one, first), text);
    }

    @Property(tries = 200)
    void additionsOfDifferentKeys_commuteInWhatTheySay(@ForAll long seed) {
        commuteAdded(new Random(seed));
    }

    private static void commuteAdded(Random random) {
        String text = house(random);
        String parent = parent(pick(random, leaves(text).keySet()));
        String one = parent + "zeta";
        String other = parent + "omega" + (random.nextBoolean() ? ".deep" : "");
        String forth = done(done(text, one, "1"), other, "2");
        String back = done(done(text, other, "2"), one, "1");
        assertEquals(leaves(forth), leaves(back), text);
        Map<String, String> expected = leaves(text);
        expected.put(one, "1");
        expected.put(other, "2");
        assertEquals(expected, leaves(forth), forth);
        assertEquals(comments(text), comments(forth), forth);
    }

    @Property(tries = 200)
    void theOldValue_changesNotAByte(@ForAll long seed) {
        identity(new Random(seed));
    }

    private static void identity(Random random) {
        String text = house(random);
        Map<String, String> leaves = leaves(text);
        String path = pick(random, leaves.keySet());
        assertEquals(text, done(text, path, leaves.get(path)), path);
    }

    @Property(tries = 500)
    void anyValue_standsAsTyped(@ForAll String anything) {
        typed(anything);
    }

    private static void typed(String anything) {
        String value = anything.strip();
        boolean structure = value.startsWith("{") || value.startsWith("[");
        boolean quoted = value.startsWith("\"") || value.startsWith("'");
        if (value.isEmpty() || structure || quoted) {
            return;
        }
        Edited edited = Edits.apply("a: {b: x}  # end\n", List.of(new Edit("a.b", value)));
        if (edited instanceof Edited.Done done) {
            assertEquals(Map.of("a.b", value), leaves(done.text()));
            assertTrue(done.text().endsWith("}  # end\n"), done.text());
        } else {
            assertNotEquals("", edited.toString());
            assertTrue(value.chars().anyMatch(c -> Character.isISOControl(c) || c > 0xd7ff || c == 0x85), value);
        }
    }

    /** A file of a few sections, maps and lists in block and flow style, with comments in between. */
    private static String house(Random random) {
        var text = new StringBuilder();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            text.append("section-" + i + ":" + comment(random) + "\n");
            for (int j = 0; j < 1 + random.nextInt(3); j++) {
                text.append("  thing-" + j + ":");
                if (random.nextBoolean()) {
                    text.append(" " + flow(random, 3) + comment(random) + "\n");
                } else {
                    text.append(comment(random) + "\n");
                    block(random, "    ", text);
                }
            }
        }
        return random.nextInt(4) == 0 ? text.toString().replace("\n", "\r\n") : text.toString();
    }

    private static void block(Random random, String indent, StringBuilder text) {
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            text.append(indent + "key-" + i + ":");
            switch (random.nextInt(4)) {
                case 0 -> text.append("   " + scalar(random) + comment(random) + "\n");
                case 1 -> text.append(" " + flow(random, 2) + comment(random) + "\n");
                case 2 ->
                    text.append("\n" + indent + "- " + scalar(random) + comment(random) + "\n" + indent + "- {k: 1}\n");
                default -> text.append("\n" + indent + "  deep: " + scalar(random) + "\n" + indent + "  # alone\n");
            }
        }
    }

    private static String flow(Random random, int depth) {
        var text = new StringBuilder("{");
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            String value = depth > 0 && random.nextInt(3) == 0
                    ? random.nextBoolean()
                            ? flow(random, depth - 1)
                            : "[" + scalar(random) + ", " + flow(random, 0) + "]"
                    : scalar(random);
            text.append(i == 0 ? "" : random.nextBoolean() ? ", " : ",  ").append("f" + i + ": " + value);
        }
        return text.append(random.nextInt(5) == 0 ? ", }" : "}").toString();
    }

    private static String scalar(Random random) {
        String[] some = {
            "15", "word", "'quoted, it''s'", "\"Cabin #3\"", "5/8 in", "14' 2 1/2\"", "no", "\u00bd \u00e4\ud83d\ude00"
        };
        return some[random.nextInt(some.length)];
    }

    /** Values without a tolerance to keep, so that what stands is what was typed. */
    private static String value(Random random) {
        String[] some = {
            "16",
            "other",
            "a, b",
            "x: y",
            "Cabin #4",
            "12:30",
            "79 1/2\"",
            "@home",
            "1.5 m \u00b1 2 mm",
            "~",
            "- dash",
            "q\"\\"
        };
        return some[random.nextInt(some.length)];
    }

    private static String comment(Random random) {
        return random.nextInt(3) == 0 ? "   # note, {odd: " + random.nextInt(100) + "}" : "";
    }

    private static String done(String text, String path, String value) {
        Edited edited = Edits.apply(text, List.of(new Edit(path, value)));
        if (edited instanceof Edited.Done done) {
            return done.text();
        }
        throw new AssertionError(edited + "\n" + text);
    }

    private static String pick(Random random, Iterable<String> paths) {
        var all = new ArrayList<String>();
        paths.forEach(all::add);
        return all.get(random.nextInt(all.size()));
    }

    private static String parent(String path) {
        String above = path.replaceFirst("(\\.[^.\\[\\]]+|\\[\\d+])$", "");
        return above.endsWith("]") || above.matches(".*\\[\\d+]") || path.endsWith("]") ? "section-0." : above + ".";
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(line -> line.contains("# "))
                .map(line -> line.substring(line.indexOf("# ")))
                .toList();
    }

    private static Map<String, String> leaves(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setSchema(new FailsafeSchema())
                .setBufferSize(text.length() + 2)
                .build();
        var leaves = new TreeMap<String, String>();
        collect("", new Load(settings).loadFromString(text), leaves);
        return leaves;
    }

    private static void collect(String path, Object value, Map<String, String> leaves) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, below) -> collect(path.isEmpty() ? "" + key : path + "." + key, below, leaves));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(path + "[" + (i + 1) + "]", list.get(i), leaves);
            }
        } else {
            leaves.put(path, String.valueOf(value));
        }
    }
}
