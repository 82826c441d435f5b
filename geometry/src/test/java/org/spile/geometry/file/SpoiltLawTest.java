package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever stands where something else is meant, it is told; nothing throws, and every problem says what to do. */
class SpoiltLawTest {
    private static final List<String> SPOILT = List.of(
            "''",
            "null",
            "~",
            "[]",
            "{}",
            "[a, b]",
            "{a: b}",
            "'x'",
            "-1",
            "0",
            "1e9",
            "NaN",
            "as units.cooler.high",
            "as a.b",
            "640..1380",
            "1380..640",
            "5 kg at 3 m",
            "12:30",
            "yes",
            "'5 5/0 in'",
            "[[1, 2]]",
            "{at: {at: 1}}",
            "[{ply: 6}, {ply: }]",
            "' out'",
            "'±'",
            "'as '",
            "'radius '",
            "'='",
            "'.'",
            "outside",
            "rest",
            "top");

    @Property(tries = 100)
    void spoiltHouses_areToldNotThrown(@ForAll long seed) {
        law("saltmarsh", seed);
        law("boat-locker", seed);
    }

    static void law(String name, long seed) {
        var random = new Random(seed);
        MapNode root = Tree.of("house.yaml", Houses.text(name)).root();
        String spoilt = words(root, random, 0.5 + random.nextInt(4));
        ReadResult result = HouseFile.readText("house.yaml", spoilt);
        assertNotNull(result);
        if (result instanceof ReadResult.Wrong wrong) {
            for (Problem problem : wrong.problems()) {
                assertFalse(problem.says().isBlank(), spoilt);
                assertFalse(problem.toString().contains("null:"), problem.toString());
            }
        }
    }

    private static String words(Node node, Random random, double faults) {
        if (random.nextInt(300) < faults) {
            return SPOILT.get(random.nextInt(SPOILT.size()));
        }
        var parts = new ArrayList<String>();
        if (node instanceof MapNode map) {
            for (MapNode.Entry entry : map.entries()) {
                boolean lost = random.nextInt(300) < faults;
                if (!lost) {
                    parts.add(entry.name() + ": " + words(entry.value(), random, faults));
                }
            }
            return "{" + String.join(", ", parts) + "}";
        }
        if (node instanceof ListNode list) {
            list.items().forEach(item -> parts.add(words(item, random, faults)));
            return "[" + String.join(", ", parts) + "]";
        }
        return "'" + ((TextNode) node).text().replace("'", "''") + "'";
    }
}
