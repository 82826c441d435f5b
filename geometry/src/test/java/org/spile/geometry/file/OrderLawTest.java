package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.spile.geometry.house.told.ToldHouse;

/** The order of keys in a map means nothing, but which stance and which situation come first. */
class OrderLawTest {
    @Property(tries = 30)
    void anyOrderOfKeys_tellsTheSameHouse(@ForAll long seed) {
        law("saltmarsh", seed);
        law("site-cabin", seed);
    }

    static void law(String name, long seed) {
        ToldHouse house = Houses.sound(Houses.text(name));
        MapNode root = Tree.of("house.yaml", Houses.text(name)).root();
        assertEquals(house, Houses.sound(words(root, new Random(seed))));
    }

    private static String words(Node node, Random random) {
        if (node instanceof MapNode map) {
            List<MapNode.Entry> entries = new ArrayList<>(map.entries());
            Collections.shuffle(entries, random);
            return "{"
                    + String.join(
                            ", ",
                            entries.stream()
                                    .map(entry -> entry.name() + ": " + words(entry.value(), random))
                                    .toList())
                    + "}";
        }
        if (node instanceof ListNode list) {
            return "["
                    + String.join(
                            ", ",
                            list.items().stream()
                                    .map(item -> words(item, random))
                                    .toList()) + "]";
        }
        return "'" + ((TextNode) node).text().replace("'", "''") + "'";
    }
}
