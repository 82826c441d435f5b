package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.solid.Box3;

/** The tree against trying all pairs. */
class BroadPhaseTest {
    private static List<Box3> boxes(RandomSolids random, int count) {
        List<Box3> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = random.between(0, 3000);
            double y = random.between(0, 2000);
            double z = random.random.nextInt(4) * 600;
            boxes.add(new Box3(
                    x, y, z, x + random.between(0, 300), y + random.between(0, 300), z + random.between(0, 300)));
        }
        return boxes;
    }

    @Test
    void findsWhatAllPairsFind() {
        RandomSolids random = new RandomSolids(51);
        for (int count : new int[] {0, 1, 2, 4, 5, 37, 400}) {
            List<Box3> boxes = boxes(random, count);
            BroadPhase tree = BroadPhase.of(boxes);
            assertEquals(count, tree.size());
            for (double margin : new double[] {0, 25, 400}) {
                List<IndexPair> expected = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    for (int j = i + 1; j < count; j++) {
                        if (boxes.get(i).gapTo(boxes.get(j)) <= margin) {
                            expected.add(new IndexPair(i, j));
                        }
                    }
                }
                assertEquals(expected, tree.pairsWithin(margin));
                Box3 probe = boxes(random, 1).get(0);
                int[] near = IntStream.range(0, count)
                        .filter(i -> boxes.get(i).gapTo(probe) <= margin)
                        .toArray();
                assertArrayEquals(near, tree.near(probe, margin));
            }
        }
    }

    @Test
    void manyEqualBoxesAreNoTrouble() {
        Box3 one = new Box3(0, 0, 0, 1, 1, 1);
        BroadPhase tree = BroadPhase.of(java.util.Collections.nCopies(100, one));
        assertEquals(100 * 99 / 2, tree.pairsWithin(0).size());
        assertTrue(tree.near(one, 0).length == 100);
        assertThrows(IllegalArgumentException.class, () -> tree.near(one, -1));
        assertThrows(IllegalArgumentException.class, () -> new Box3(1, 0, 0, 0, 1, 1));
    }
}
