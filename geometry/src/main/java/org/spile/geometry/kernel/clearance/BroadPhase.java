package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;

/**
 * Finds which boxes come near each other without trying all pairs: a tree of bounding boxes in flat arrays.
 *
 * <p>Each node is split at the median of the box centres along its longest side, so the tree is balanced whatever the
 * scene; a leaf holds at most four boxes (packing after Leutenegger, Lopez, Edgington, ICDE 1997). Nodes stand in
 * preorder: the left child follows its parent. Height counts like the other two directions. Same boxes, same order of
 * answers. Immutable; lengths in mm.
 */
public final class BroadPhase {
    private static final int MOST_IN_LEAF = 4;

    private final int count;
    /** Box k of the tree's order: six numbers, least x y z then greatest. */
    private final double[] boxes;
    /** Which box of the caller stands at each place of the tree's order. */
    private final int[] items;
    /** Six numbers a node. */
    private final double[] nodes;
    /** The right child of each node, or 0 for a leaf. */
    private final int[] right;

    private final int[] first;
    private final int[] last;
    private int used;

    private BroadPhase(List<Box3> given) {
        count = given.size();
        items = new int[count];
        Arrays.setAll(items, i -> i);
        double[] source = new double[6 * count];
        for (int i = 0; i < count; i++) {
            copy(given.get(i), source, 6 * i);
        }
        int most = Math.max(1, count);
        nodes = new double[6 * most];
        right = new int[most];
        first = new int[most];
        last = new int[most];
        if (count > 0) {
            build(0, count, source);
        }
        boxes = new double[6 * count];
        for (int i = 0; i < count; i++) {
            System.arraycopy(source, 6 * items[i], boxes, 6 * i, 6);
        }
    }

    /**
     * Builds the tree.
     *
     * @param boxes bounds of the things, in the caller's order
     * @return the tree
     */
    public static BroadPhase of(List<Box3> boxes) {
        return new BroadPhase(boxes);
    }

    /**
     * How many boxes the tree holds.
     *
     * @return the count
     */
    public int size() {
        return count;
    }

    /**
     * The boxes within a distance of a box.
     *
     * @param box where to look
     * @param marginMm Euclidean distance in mm, not negative
     * @return indices of the boxes, ascending
     * @throws IllegalArgumentException if the margin is negative
     */
    public int[] near(Box3 box, double marginMm) {
        IndexList found = new IndexList();
        near(box, marginMm, found);
        return found.sorted();
    }

    /**
     * The boxes within a distance of a box, told one by one without allocating.
     *
     * @param box where to look
     * @param marginMm Euclidean distance in mm, not negative
     * @param found receives each index, in the tree's order
     * @throws IllegalArgumentException if the margin is negative
     */
    public void near(Box3 box, double marginMm, IntConsumer found) {
        double margin = GeometryTolerance.notNegative("margin", marginMm);
        if (count > 0) {
            near(0, box, margin * margin, found);
        }
    }

    private void near(int node, Box3 box, double margin2, IntConsumer found) {
        if (gap2(nodes, 6 * node, box) > margin2) {
            return;
        }
        if (right[node] > 0) {
            near(node + 1, box, margin2, found);
            near(right[node], box, margin2, found);
            return;
        }
        for (int i = first[node]; i < last[node]; i++) {
            if (gap2(boxes, 6 * i, box) <= margin2) {
                found.accept(items[i]);
            }
        }
    }

    /**
     * All pairs of boxes within a distance of each other.
     *
     * @param marginMm Euclidean distance in mm, not negative
     * @return pairs, the lesser index first, in ascending order
     * @throws IllegalArgumentException if the margin is negative
     */
    public List<IndexPair> pairsWithin(double marginMm) {
        List<IndexPair> pairs = new ArrayList<>();
        forEachPair(marginMm, (i, j) -> pairs.add(new IndexPair(i, j)));
        pairs.sort(Comparator.comparingInt(IndexPair::first).thenComparingInt(IndexPair::second));
        return pairs;
    }

    /**
     * All pairs of boxes within a distance of each other, told one by one without allocating.
     *
     * @param marginMm Euclidean distance in mm, not negative
     * @param visitor receives each pair once, the lesser index first, in the tree's order
     * @throws IllegalArgumentException if the margin is negative
     */
    public void forEachPair(double marginMm, PairVisitor visitor) {
        double margin = GeometryTolerance.notNegative("margin", marginMm);
        if (count > 0) {
            within(0, margin * margin, visitor);
        }
    }

    private void within(int node, double margin2, PairVisitor visitor) {
        if (right[node] > 0) {
            within(node + 1, margin2, visitor);
            within(right[node], margin2, visitor);
            between(node + 1, right[node], margin2, visitor);
            return;
        }
        for (int i = first[node]; i < last[node]; i++) {
            for (int j = i + 1; j < last[node]; j++) {
                tell(i, j, margin2, visitor);
            }
        }
    }

    private void between(int a, int b, double margin2, PairVisitor visitor) {
        if (gap2(nodes, 6 * a, nodes, 6 * b) > margin2) {
            return;
        }
        boolean splitA = right[a] > 0 && (right[b] == 0 || last[a] - first[a] >= last[b] - first[b]);
        if (splitA) {
            between(a + 1, b, margin2, visitor);
            between(right[a], b, margin2, visitor);
        } else if (right[b] > 0) {
            between(a, b + 1, margin2, visitor);
            between(a, right[b], margin2, visitor);
        } else {
            for (int i = first[a]; i < last[a]; i++) {
                for (int j = first[b]; j < last[b]; j++) {
                    tell(i, j, margin2, visitor);
                }
            }
        }
    }

    private void tell(int i, int j, double margin2, PairVisitor visitor) {
        if (gap2(boxes, 6 * i, boxes, 6 * j) <= margin2) {
            visitor.pair(Math.min(items[i], items[j]), Math.max(items[i], items[j]));
        }
    }

    // ---- building -----------------------------------------------------------------------------------------------

    private int build(int from, int to, double[] source) {
        int node = used++;
        first[node] = from;
        last[node] = to;
        if (to - from > MOST_IN_LEAF) {
            int axis = longestCentreAxis(from, to, source);
            int middle = (from + to) >>> 1;
            select(from, to - 1, middle, axis, source);
            build(from, middle, source);
            right[node] = build(middle, to, source);
            unite(node, node + 1, right[node]);
        } else {
            enclose(node, from, to, source);
        }
        return node;
    }

    private void enclose(int node, int from, int to, double[] source) {
        for (int k = 0; k < 3; k++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                least = Math.min(least, source[6 * items[i] + k]);
                most = Math.max(most, source[6 * items[i] + 3 + k]);
            }
            nodes[6 * node + k] = least;
            nodes[6 * node + 3 + k] = most;
        }
    }

    private void unite(int node, int left, int other) {
        for (int k = 0; k < 3; k++) {
            nodes[6 * node + k] = Math.min(nodes[6 * left + k], nodes[6 * other + k]);
            nodes[6 * node + 3 + k] = Math.max(nodes[6 * left + 3 + k], nodes[6 * other + 3 + k]);
        }
    }

    private int longestCentreAxis(int from, int to, double[] source) {
        int longest = 0;
        double length = -1;
        for (int k = 0; k < 3; k++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double centre = centre(items[i], k, source);
                // Plain comparisons: no centre is NaN, and this runs once per box, axis and level.
                if (centre < least) {
                    least = centre;
                }
                if (centre > most) {
                    most = centre;
                }
            }
            if (most - least > length) {
                length = most - least;
                longest = k;
            }
        }
        return longest;
    }

    /** Brings the item of a rank to its place (Hoare's selection, 1961); equal centres go by index. */
    private void select(int low, int high, int rank, int axis, double[] source) {
        int from = low;
        int to = high;
        while (from < to) {
            int pivot = items[(from + to) >>> 1];
            double at = centre(pivot, axis, source);
            int i = from;
            int j = to;
            while (i <= j) {
                while (before(items[i], centre(items[i], axis, source), pivot, at)) {
                    i++;
                }
                while (before(pivot, at, items[j], centre(items[j], axis, source))) {
                    j--;
                }
                if (i <= j) {
                    int swapped = items[i];
                    items[i++] = items[j];
                    items[j--] = swapped;
                }
            }
            if (rank <= j) {
                to = j;
            } else if (rank >= i) {
                from = i;
            } else {
                return;
            }
        }
    }

    private static boolean before(int item, double at, int other, double otherAt) {
        return at < otherAt || (at == otherAt && item < other);
    }

    private static double centre(int item, int axis, double[] source) {
        return source[6 * item + axis] + source[6 * item + 3 + axis];
    }

    private static void copy(Box3 box, double[] to, int at) {
        to[at] = box.minX();
        to[at + 1] = box.minY();
        to[at + 2] = box.minZ();
        to[at + 3] = box.maxX();
        to[at + 4] = box.maxY();
        to[at + 5] = box.maxZ();
    }

    private static double gap2(double[] a, int i, Box3 box) {
        double x = Math.max(0, Math.max(a[i] - box.maxX(), box.minX() - a[i + 3]));
        double y = Math.max(0, Math.max(a[i + 1] - box.maxY(), box.minY() - a[i + 4]));
        double z = Math.max(0, Math.max(a[i + 2] - box.maxZ(), box.minZ() - a[i + 5]));
        return x * x + y * y + z * z;
    }

    private static double gap2(double[] a, int i, double[] b, int j) {
        double x = Math.max(0, Math.max(a[i] - b[j + 3], b[j] - a[i + 3]));
        double y = Math.max(0, Math.max(a[i + 1] - b[j + 4], b[j + 1] - a[i + 4]));
        double z = Math.max(0, Math.max(a[i + 2] - b[j + 5], b[j + 2] - a[i + 5]));
        return x * x + y * y + z * z;
    }
}
